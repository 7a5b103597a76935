package chock.assess.facts;

/** The petrol runs through metal pipe alone, and somebody has seen that. */
public record MetalPipeFact() { }
