/** Whether shops are kept in a PostgreSQL database there. A file of its own, so that who asks need not bring the driver. */
export const isPostgres = (place: string): boolean => /^postgres(ql)?:/.test(place)
