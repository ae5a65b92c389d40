/** Which sources stand behind the sums of the setup; the keys are those of docs/sources.md. */
export const rulesSources = ['SETUP-RULES'] as const
export const geometrySources = ['GEOMETRY', 'SETUP-RULES'] as const
export const tapSources = ['TAP-LEADS', 'SETUP-RULES'] as const
