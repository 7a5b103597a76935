package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;

/**
 * Load a tyre carries, by the load index in its service description (UN R75 Annex 4). Indexes 20 to 150 were read in
 * copies that agree; 0 to 19 are from memory and follow from the rule that 80 steps are a factor of ten.
 */
public final class LoadIndex {
    /** Highest index in the table. */
    public static final int HIGHEST = 150;

    /** Kilograms, twenty to a line from 0. */
    private static final String[] KILOGRAMS = ("""
            45 46.2 47.5 48.7 50 51.5 53 54.5 56 58 60 61.5 63 65 67 69 71 73 75 77.5
            80 82.5 85 87.5 90 92.5 95 97.5 100 103 106 109 112 115 118 121 125 128 132 136
            140 145 150 155 160 165 170 175 180 185 190 195 200 206 212 218 224 230 236 243
            250 257 265 272 280 290 300 307 315 325 335 345 355 365 375 387 400 412 425 437
            450 462 475 487 500 515 530 545 560 580 600 615 630 650 670 690 710 730 750 775
            800 825 850 875 900 925 950 975 1000 1030 1060 1090 1120 1150 1180 1215 1250 1285 1320 1360
            1400 1450 1500 1550 1600 1650 1700 1750 1800 1850 1900 1950 2000 2060 2120 2180 2240 2300 2360 2430
            2500 2575 2650 2725 2800 2900 3000 3075 3150 3250 3350
            """).strip().split("\\s+");

    private LoadIndex() { }

    /**
     * Load in kg for one tyre at its pressure for that load.
     *
     * @param index 0 to 150
     * @throws BadFigureInput for any other index
     */
    public static Quantity load(int index) {
        if (index < 0 || index > HIGHEST) {
            throw new BadFigureInput("load index " + index + " is not in the table; it runs from 0 to " + HIGHEST);
        }
        return Quantity.of(KILOGRAMS[index], Unit.KG);
    }
}
