using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Web.Api.Samples;

/// <summary>A determination as it stands now; doesNotCount says why it can't count in a decision.</summary>
public sealed record DeterminationLine(
    Guid Id, string Method, string Edition, int ContainerNumber, string Instrument, DateTimeOffset MeasuredAt, string? MeasuredBy, string? DoesNotCount,
    IReadOnlyList<ResultAnswer> Results)
{
    public static DeterminationLine Of(DeterminationState state) => new(
        state.Id, state.Method, state.Edition, state.ContainerNumber, state.Instrument, state.MeasuredAt, state.MeasurerAccount, state.DoesNotCount,
        [.. state.Results.Select(ResultAnswer.InKilopascals)]);
}
