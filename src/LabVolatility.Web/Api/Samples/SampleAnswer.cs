using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Web.Api.Samples;

/// <summary>A sample as it stands now.</summary>
public sealed record SampleAnswer(
    string Number, string State, string Grade, string? Batch, string? Tank, string? SamplePoint, string Level, DateTimeOffset SampledAt, string SampledBy,
    DateTimeOffset? ReceivedAt, string? Note, string? Void, IReadOnlyList<ContainerAnswer> Containers, IReadOnlyList<TestAnswer> Tests,
    IReadOnlyList<DeterminationLine> Determinations)
{
    public static SampleAnswer Of(SampleSheet sheet)
    {
        var sample = sheet.Sample;
        return new SampleAnswer(
            sample.Number, sample.State.ToString().ToLowerInvariant(), sample.GradeCode, sheet.Batch, sample.TankCode, sample.SamplePointCode,
            SampleRequestShape.Text(sample.Level), sample.SampledAt, sample.SampledBy, sample.ReceivedAt, sample.Note, sheet.Void,
            [.. sample.Containers.OrderBy(c => c.Number).Select(c => new ContainerAnswer(
                c.Number, c.Code, c.Kind.Text(), Quantity.Of(c.VolumeMillilitres, "mL"), c.FillPercent is { } fill ? Rounding.Trim(fill) : null, Quantity.Of(c.TemperatureCelsius, TemperatureUnit.Celsius.Symbol()), c.Seal, c.Openings.Count))],
            [.. sample.Tests.OrderBy(t => t.Method, StringComparer.Ordinal).Select(t => new TestAnswer(t.Method, t.State.ToString().ToLowerInvariant(), t.Wanted, t.DueAt, t.Why))],
            [.. sheet.Determinations.Select(DeterminationLine.Of)]);
    }
}
