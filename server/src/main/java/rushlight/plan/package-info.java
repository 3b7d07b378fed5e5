/**
 * The practice schedule: which drill in which session. {@link rushlight.plan.Scheduler} finds the best schedule of a
 * {@link rushlight.plan.PlanTask} and proves how good it is; {@link rushlight.plan.PlanCheck} tells what a schedule breaks,
 * and knows nothing of how it was found. C01 to C21 name the constraints; {@link rushlight.plan.Rule} says each in words.
 */
@NullMarked
package rushlight.plan;

import org.jspecify.annotations.NullMarked;
