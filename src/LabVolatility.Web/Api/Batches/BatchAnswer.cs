using LabVolatility.Core.Limits;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;

namespace LabVolatility.Web.Api.Batches;

/// <summary>A batch as it stands now; decision is the one in force, null while it is undecided.</summary>
public sealed record BatchAnswer(
    string Number, string Grade, string State, string? Tank, Quantity? Volume, decimal? EthanolPercent, string? EthanolMethod,
    IReadOnlyList<DestinationAnswer> Destinations, DateOnly From, DateOnly Until, string? Note, IReadOnlyList<string> Samples, DecisionAnswer? Decision)
{
    public static BatchAnswer Of(FindBatch.Found found)
    {
        var batch = found.Batch;
        return new BatchAnswer(
            batch.Number, batch.GradeCode, batch.State.Text(), batch.TankCode, Quantity.Of(batch.CubicMetres, "m3"),
            batch.EthanolPercent is { } ethanol ? Rounding.Trim(ethanol) : null, batch.EthanolMethod,
            [.. batch.Destinations.Select(d => new DestinationAnswer(d.Area, d.Point.Text()))], batch.From, batch.Until, batch.Note, found.Samples,
            DecisionAnswer.Of(found.InForce));
    }
}
