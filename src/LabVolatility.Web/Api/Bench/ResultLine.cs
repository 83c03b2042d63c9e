using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Web.Api.Bench;

/// <summary>A result in a list; counts is false for one that is set aside or that no person has taken on.</summary>
public sealed record ResultLine(
    string Sample, string Grade, string? Tank, string? Batch, Guid Determination, string Method, string Edition, string Instrument, DateTimeOffset MeasuredAt, bool Counts,
    string Quantity, decimal Value, string Reported, string Unit, string Suffix, string? Correlation)
{
    public static ResultLine Of(ReadResults.Line line)
    {
        var result = ResultAnswer.InKilopascals(line.Result);
        return new(
            line.Sample, line.Grade, line.Tank, line.Batch, line.Determination, line.Method, line.Edition, line.Instrument, line.MeasuredAt,
            line.Counts, result.Quantity, result.Value, result.Reported, result.Unit, result.Suffix, result.Correlation);
    }
}
