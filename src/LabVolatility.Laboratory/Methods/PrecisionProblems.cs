using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Methods;

/// <summary>What can be wrong in a precision entry.</summary>
internal static class PrecisionProblems
{
    private const decimal HighestKpa = 3500m;

    public static IReadOnlyList<Problem> Of(PrecisionEntry entry)
    {
        var problems = new List<Problem>();
        if (!TestMethods.TryFind(entry.Method, out var method))
            problems.Add(new Problem("/method", $"\"{entry.Method}\" is not a test method of this laboratory."));
        else if (!method.PrecisionQuantities.Contains(entry.Quantity))
            problems.Add(new Problem("/quantity", $"{entry.Method} does not state precision of \"{entry.Quantity}\"."));
        if (string.IsNullOrWhiteSpace(entry.Edition))
            problems.Add(new Problem("/edition", "Precision belongs to an edition."));
        if (string.IsNullOrWhiteSpace(entry.Source))
            problems.Add(new Problem("/source", "Say where it stands: designation, edition, clause."));
        if (entry.LowKpa < 0)
            problems.Add(new Problem("/low", "The range begins at 0 kPa or above."));
        if (entry.HighKpa > HighestKpa)
            problems.Add(new Problem("/high", "The range ends at 3500 kPa or below."));
        if (entry.LowKpa > entry.HighKpa)
            problems.Add(new Problem("/high", "The range's upper end is below its lower end."));
        if (entry.ContainerMillilitres <= 0)
            problems.Add(new Problem("/containerVolume", "A container holds more than 0 mL."));
        CheckForm(entry, entry.RepeatabilityConstant, entry.RepeatabilitySlope, "/repeatability", "r", problems);
        CheckForm(entry, entry.ReproducibilityConstant, entry.ReproducibilitySlope, "/reproducibility", "R", problems);
        if (problems.Count == 0 && PrecisionInForce.Statement(entry) is { Repeatability: null, Reproducibility: null })
            problems.Add(new Problem("/repeatability", "Enter r, R, or both."));
        return problems;
    }

    // A form must be above zero over the whole range it is for: zero is not "unset".
    private static void CheckForm(
        PrecisionEntry entry, decimal? constant, decimal? slope, string field, string name, List<Problem> problems)
    {
        if ((constant is null && slope is null) || entry.LowKpa < 0 || entry.HighKpa > HighestKpa)
            return;
        var form = new LinearForm(constant ?? 0m, slope ?? 0m);
        if (form.At(InUnit(entry.LowKpa ?? 0.1m)) <= 0 || form.At(InUnit(entry.HighKpa ?? HighestKpa)) <= 0)
            problems.Add(new Problem(field, $"{name} must be above zero over the whole range; leave both fields empty where it isn't set."));

        decimal InUnit(decimal kpa) => AbsolutePressure.From(kpa, PressureUnit.Kilopascal).In(entry.Unit);
    }
}
