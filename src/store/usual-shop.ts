/** The name of a shop that has its database to itself. */
export const usualShop = 'shop'
