using LabVolatility.Core.Methods;

namespace LabVolatility.Web.Api;

/// <summary>A sample as sent.</summary>
/// <param name="Condition">What the method is asked with.</param>
/// <param name="ContainerStated">The container, where it was stated: one that was only supposed must not pick its precision.</param>
/// <param name="Supposed">Findings on what nobody stated.</param>
internal sealed record SampleRead(SampleCondition Condition, ContainerKind? ContainerStated, IReadOnlyList<Finding> Supposed);
