using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Web.Methods;

/// <summary>A precision entry as typed: r = a + b · X and R likewise.</summary>
public sealed class PrecisionDraft
{
    private const decimal WidestConstant = 3_500_000m;
    private const decimal WidestSlope = 10m;
    private const decimal LargestContainer = 100_000m;
    private const decimal HighestKpa = 1_000_000m;

    public string? Edition { get; set; }

    public string? Quantity { get; set; }

    public string? Container { get; set; }

    public string? Millilitres { get; set; }

    public string? Low { get; set; }

    public string? High { get; set; }

    public string Unit { get; set; } = PressureUnit.Kilopascal.Symbol();

    public string? RepeatabilityConstant { get; set; }

    public string? RepeatabilitySlope { get; set; }

    public string? ReproducibilityConstant { get; set; }

    public string? ReproducibilitySlope { get; set; }

    public string? Source { get; set; }

    public static PrecisionDraft For(TestMethod method) => new()
    {
        Edition = method.Edition,
        Quantity = method.PrecisionQuantities[0],
    };

    /// <summary>The entry, or what can't be read of it.</summary>
    public PrecisionEntry? Read(TestMethod method, out IReadOnlyList<Problem> problems)
    {
        var found = new List<Problem>();
        var entry = new PrecisionEntry
        {
            Method = method.Designation,
            Edition = (Edition ?? "").Trim(),
            Quantity = Quantity ?? "",
            Container = ContainerKinds.TryParse(Container, out var kind) ? kind : null,
            ContainerMillilitres = Number(Millilitres, "/containerVolume", 0m, LargestContainer, found),
            LowKpa = Number(Low, "/low", 0m, HighestKpa, found),
            HighKpa = Number(High, "/high", 0m, HighestKpa, found),
            Unit = PressureUnits.TryParse(Unit, out var unit) ? unit : PressureUnit.Kilopascal,
            RepeatabilityConstant = Number(RepeatabilityConstant, "/repeatability", -WidestConstant, WidestConstant, found),
            RepeatabilitySlope = Number(RepeatabilitySlope, "/repeatabilitySlope", -WidestSlope, WidestSlope, found),
            ReproducibilityConstant = Number(ReproducibilityConstant, "/reproducibility", -WidestConstant, WidestConstant, found),
            ReproducibilitySlope = Number(ReproducibilitySlope, "/reproducibilitySlope", -WidestSlope, WidestSlope, found),
            Source = Source ?? "",
        };
        problems = found;
        return found.Count > 0 ? null : entry;
    }

    private static decimal? Number(string? text, string field, decimal low, decimal high, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        if (QuantityText.TryReadNumber(text, low, high, out var value, out var problem))
            return value;
        problems.Add(new Problem(field, problem!));
        return null;
    }
}
