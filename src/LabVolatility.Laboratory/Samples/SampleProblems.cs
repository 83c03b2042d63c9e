using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Samples;

/// <summary>What can be wrong in a sample as typed, apart from what the database knows.</summary>
internal static class SampleProblems
{
    private static readonly TimeSpan ClockTolerance = TimeSpan.FromMinutes(5);

    public static void Check(SampleRequest request, DateTimeOffset now, List<Problem> problems)
    {
        if (request.SampledAt is null)
            problems.Add(new Problem("/sampledAt", "When was it drawn?"));
        else if (request.SampledAt > now + ClockTolerance)
            problems.Add(new Problem("/sampledAt", "The sample can't have been drawn in the future."));
        if (string.IsNullOrWhiteSpace(request.SampledBy))
            problems.Add(new Problem("/sampledBy", "Who drew it?"));
        if (request.ReceivedAt > now + ClockTolerance)
            problems.Add(new Problem("/receivedAt", "The sample can't have been received in the future."));
        if (request.ReceivedAt < request.SampledAt)
            problems.Add(new Problem("/receivedAt", "It was received before it was drawn."));
        if (request.Containers.Count is 0 or > 99)
            problems.Add(new Problem("/containers", "A sample has 1 to 99 containers."));
        CheckContainers(request.Containers, problems);
        if (request.ReceivedAt is null && request.Verdict != ReceiptVerdict.AsExpected)
            problems.Add(new Problem("/verdict", "What comes of a sample is decided when it is received."));
        if (request.ReceivedAt is not null
            && ReceiptCondition.Check(ReceiptCondition.Departures(request.Containers), request.Verdict, request.VerdictNote) is { } problem)
            problems.Add(problem);
    }

    public static void CheckContainers(IReadOnlyList<ContainerRequest> containers, List<Problem> problems)
    {
        for (var i = 0; i < containers.Count; i++)
        {
            if (containers[i].VolumeMillilitres is <= 0 or > 100_000m)
                problems.Add(new Problem($"/containers/{i}/containerVolume", "A container holds more than 0 and at most 100 L."));
            if (containers[i].FillPercent is <= 0 or > 100)
                problems.Add(new Problem($"/containers/{i}/fillPercent", "Fill is more than 0 and at most 100 %."));
            if (!string.IsNullOrWhiteSpace(containers[i].Temperature)
                && !QuantityText.TryReadTemperature(containers[i].Temperature, TemperatureUnit.Celsius, out _, out var problem))
                problems.Add(new Problem($"/containers/{i}/temperature", problem!));
        }
    }
}
