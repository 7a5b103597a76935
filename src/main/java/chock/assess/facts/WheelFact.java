package chock.assess.facts;

import chock.record.Machine;

/** One wheel with its tyre. */
public record WheelFact(String end, Machine.Rim rim, boolean spoked, boolean tube, String point, String tyrePoint) { }
