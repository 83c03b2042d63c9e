using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>A test method as data: what it takes, how it is set, what it reports and what it demands.</summary>
public sealed record TestMethod
{
    /// <summary>The designation without edition: "ASTM D5191".</summary>
    public required string Designation { get; init; }

    /// <summary>The edition that these figures follow: "22".</summary>
    public required string Edition { get; init; }

    /// <summary>What it does, in our own words.</summary>
    public required string Title { get; init; }

    /// <summary>Symbol of the total pressure it reads: "Ptot" or "ASVP".</summary>
    public required string TotalSymbol { get; init; }

    /// <summary>The quantities it can report, that of the reading first.</summary>
    public required IReadOnlyList<string> Quantities { get; init; }

    /// <summary>The pressures it covers.</summary>
    public required MethodScope Scope { get; init; }

    /// <summary>The pressures it covers for aviation turbine fuel, where they are others; null: the same.</summary>
    public MethodScope? AviationScope { get; init; }

    /// <summary>The chamber's temperature.</summary>
    public required Temperature NominalTemperature { get; init; }

    /// <summary>How far the chamber may be off, in °C, included.</summary>
    public required decimal TemperatureTolerance { get; init; }

    /// <summary>The vapour-liquid ratio.</summary>
    public required decimal NominalRatio { get; init; }

    /// <summary>How far the ratio may be off, included.</summary>
    public required decimal RatioTolerance { get; init; }

    /// <summary>How the instrument is set where it expands the specimen and takes the gas part off; null where the sample is saturated with air instead.</summary>
    public ExpansionSettings? Expansion { get; init; }

    /// <summary>The authority whose correlation is used when none is named.</summary>
    public required Authority DefaultAuthority { get; init; }

    /// <summary>The authorities that have a correlation on this method.</summary>
    public required IReadOnlyList<Authority> Authorities { get; init; }

    /// <summary>Whether a container serves one test only, so that a duplicate is a second, sealed container.</summary>
    public required bool OneTestPerContainer { get; init; }

    /// <summary>Below this size a container isn't taken.</summary>
    public required Volume MinimumContainerVolume { get; init; }

    /// <summary>The container sizes that have precision figures of their own; empty where that isn't known.</summary>
    public required IReadOnlyList<Volume> PrecisionContainerVolumes { get; init; }

    /// <summary>The sample kinds it takes.</summary>
    public required IReadOnlyList<SampleKind> Kinds { get; init; }

    /// <summary>The containers it takes.</summary>
    public required IReadOnlyList<ContainerKind> Containers { get; init; }

    /// <summary>What the sample needs before and during the test, in order.</summary>
    public required IReadOnlyList<HandlingStep> Handling { get; init; }

    /// <summary>Cautions at its steps; at most two ask to be acknowledged.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }

    /// <summary>How well the least known of these figures is known.</summary>
    public required FactStatus Status { get; init; }

    /// <summary>What the figures were taken from.</summary>
    public required IReadOnlyList<string> Sources { get; init; }

    /// <summary>Whether the gas part is measured and taken off, so that the sample isn't saturated with air.</summary>
    [System.Diagnostics.CodeAnalysis.MemberNotNullWhen(true, nameof(Expansion))]
    public bool TakesGasOff => Expansion is not null;

    /// <summary>The quantities that precision may be stated for: what is reported beyond the bare readings.</summary>
    public IReadOnlyList<string> PrecisionQuantities => [.. Quantities.Where(q => q != TotalSymbol && q != GasPart.Symbol)];

    /// <summary>The unit to work a reading in: psi where the method prints it, else kPa.</summary>
    /// <remarks>Source: the method's scope, see <see cref="Scope"/>.</remarks>
    public PressureUnit WorkUnit(PressureUnit readingUnit) =>
        readingUnit == PressureUnit.Psi && Scope.LowPsi is not null ? PressureUnit.Psi : PressureUnit.Kilopascal;

    /// <summary>The pressures it covers for a kind of sample.</summary>
    /// <remarks>Source: the one that each scope names.</remarks>
    public MethodScope ScopeOf(SampleKind kind) => kind == SampleKind.AviationTurbine && AviationScope is { } own ? own : Scope;

    /// <summary>Designation and edition as cited: "ASTM D5191-22", "EN 13016-1:2024".</summary>
    public string Citation =>
        Designation + (Designation.StartsWith("ASTM", StringComparison.Ordinal) ? "-" : ":") + Edition;
}
