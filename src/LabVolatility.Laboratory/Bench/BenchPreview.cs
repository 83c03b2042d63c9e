using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Bench;

/// <summary>What the fields of the bench would give, worked out by the function that reports; nothing is stored.</summary>
/// <param name="Readings">As understood.</param>
/// <param name="Handling">As understood, with the container's fill level where none was typed.</param>
/// <param name="Problems">What can't be read, field by field.</param>
/// <param name="Evaluated">Results and findings; null until a container is picked and the pressure typed.</param>
/// <param name="Precision">r and R of each result that the method states them for, in words, by quantity and correlation.</param>
/// <param name="Surprise">A reading far from the last ones of the grade; it never blocks.</param>
public sealed record BenchPreview(
    ReadingsAsTyped Readings, HandlingAsTyped Handling, IReadOnlyList<Problem> Problems, EvaluatedDetermination? Evaluated,
    IReadOnlyList<PrecisionInWords> Precision, string? Surprise)
{
    public static BenchPreview Of(BenchTest test, BenchEntry entry)
    {
        var (readings, handling, problems) = BenchReading.Read(entry);
        var container = test.Containers.FirstOrDefault(c => c.Container.Number == entry.ContainerNumber)?.Container;
        handling = handling with { FillPercent = handling.FillPercent ?? container?.FillPercent };
        if (container is null || readings.TotalPressure is null)
            return new BenchPreview(readings, handling, problems, null, [], null);
        var evaluated = DeterminationEvaluation.Evaluate(new DeterminationInput(
            test.Method.Designation, test.Test.Authorities, test.Kind, container.Kind, container.VolumeMillilitres, readings, handling, test.OwnCorrelation));
        return new BenchPreview(
            readings, handling, problems, evaluated,
            [.. evaluated.Results.Where(r => test.Method.PrecisionQuantities.Contains(r.Quantity)).Select(r => Find(test, container, r, handling.Hazy))],
            SurprisingReading.Words(Reading.Pressure(readings.TotalPressure)!.Value, test.RecentKpa, test.Sample.GradeCode));
    }

    private static PrecisionInWords Find(BenchTest test, Samples.Container container, ReportedResult result, bool hazy)
    {
        if (hazy)
            return new PrecisionInWords(result.Quantity, result.Correlation, null, null, result.Unit, "A hazy sample has no precision.");
        if (!AbsolutePressure.TryFrom(result.Value, result.Unit, out var level))
            return new PrecisionInWords(result.Quantity, result.Correlation, null, null, result.Unit, "No precision at a pressure below zero.");
        var answer = PrecisionChoice.Choose(test.Precision, new PrecisionQuestion(
            test.Method.Designation, test.Method.Edition, result.Quantity, container.Kind,
            Volume.From(container.VolumeMillilitres, VolumeUnit.Millilitre), level));
        return new PrecisionInWords(
            result.Quantity, result.Correlation, answer.Statement?.RepeatabilityAt(level, result.Unit),
            answer.Statement?.ReproducibilityAt(level, result.Unit), result.Unit, answer.Why);
    }
}
