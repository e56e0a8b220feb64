package org.borewright.fit.shape;

import java.util.Optional;

/**
 * A threaded fastener as far as its torque goes.
 *
 * @param thread its ISO metric thread; empty for another form
 * @param strength its property class; empty when unknown
 * @param condition of thread and face when tightened
 * @param intoAluminium whether it is screwed into aluminium, which gives way before the stud
 */
public record BoltShape(
        Optional<MetricThread> thread,
        Optional<PropertyClass> strength,
        ThreadCondition condition,
        boolean intoAluminium) {}
