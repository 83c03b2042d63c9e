using System.Globalization;
using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Web.Api.Bench;

/// <summary>A result in a list; counts is false for one that is set aside or that no person has taken on.</summary>
public sealed record ResultLine(
    string Sample, string Grade, string? Tank, string? Batch, string Method, string Edition, string Instrument, DateTimeOffset MeasuredAt, bool Counts,
    string Quantity, decimal Value, string Reported, string Unit, string Suffix, string? Correlation)
{
    public static ResultLine Of(ReadResults.Line line) => new(
        line.Sample, line.Grade, line.Tank, line.Batch, line.Method, line.Edition, line.Instrument, line.MeasuredAt, line.Counts,
        line.Result.Quantity, decimal.Parse(line.Result.Exact, CultureInfo.InvariantCulture), line.Result.Reported, line.Result.Unit, line.Result.Suffix,
        line.Result.Correlation.Length == 0 ? null : line.Result.Correlation);
}
