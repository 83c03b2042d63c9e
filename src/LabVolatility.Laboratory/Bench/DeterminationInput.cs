using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Laboratory.Bench;

/// <summary>All that the result of a determination follows from.</summary>
/// <param name="Method">Designation of the test method.</param>
/// <param name="Authorities">Whose correlations are reported.</param>
/// <param name="Kind">What the sample is.</param>
/// <param name="Container">What it is kept in.</param>
/// <param name="ContainerMillilitres">The container's size.</param>
/// <param name="Readings">As typed.</param>
/// <param name="Handling">As confirmed.</param>
/// <param name="Own">The laboratory's own correlation, where the method's isn't public; null: not set.</param>
public sealed record DeterminationInput(
    string Method,
    IReadOnlyList<Authority> Authorities,
    SampleKind Kind,
    ContainerKind Container,
    decimal ContainerMillilitres,
    ReadingsAsTyped Readings,
    HandlingAsTyped Handling,
    Correlation? Own)
{
    internal SampleCondition Condition => new(
        Kind, Container, Volume.From(ContainerMillilitres, VolumeUnit.Millilitre), Handling.FillPercent,
        Handling.AirSaturated, Handling.Hazy, Handling.Phases);

    internal Readings Quantities => Reading.Quantities(Readings, Handling);
}
