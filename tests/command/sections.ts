/** Small sections of the Tallow Ridge Transit Exchange, for the command to read. */

/** Salted walks in Class F3 with far too little air: one certain `must`. */
export const lowAir = `SECTION 32 13 13 - CONCRETE PAVING

PART 2 - PRODUCTS

2.03 MIXTURES

A. Exterior shelter walks: Exposure Class F3, nominal maximum aggregate size 3/4 in.

B. Shelter walk air content: 2 percent, plus or minus 0.5 percent.

END OF SECTION
`;

/** A heated hall: nothing here can scale. */
export const interior = `SECTION 03 35 00 - INTERIOR FLOOR FINISHING

PART 1 - GENERAL

1.01 SUMMARY

A. Heated ticket-hall floor: Exposure Class F0, hard-troweled.

PART 3 - EXECUTION

3.01 FINISHING

A. Ticket-hall floor: steel trowel finish.

3.02 CURING

A. Cure ticket-hall floor with curing compound for 7 days.

END OF SECTION
`;

export const readme = '# Tallow Ridge\n\nHow to open these files. Version 2.\n';
