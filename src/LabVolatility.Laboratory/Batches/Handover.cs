using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;

namespace LabVolatility.Laboratory.Batches;

/// <summary>What is handed over, as somebody wrote it.</summary>
/// <param name="Text">What the next shift must know or do.</param>
/// <param name="AskedOf">Who is asked; null for whoever decides next.</param>
/// <param name="DueAt">By when; null where it has time.</param>
public sealed record Handover(string? Text, string? AskedOf = null, DateTimeOffset? DueAt = null)
{
    internal IEnumerable<Problem> Problems()
    {
        if (string.IsNullOrWhiteSpace(Text))
            yield return new Problem("/handover/text", "Say what the next shift must know or do.");
        if (Text?.Trim().Length > Lengths.Note)
            yield return new Problem("/handover/text", $"A hand-over note has at most {Lengths.Note} characters.");
        if (AskedOf?.Trim().Length > Lengths.Name)
            yield return new Problem("/handover/askedOf", $"Who is asked has at most {Lengths.Name} characters.");
    }

    internal HandoverNote Note(Guid batch, Guid? decision, Actor by, DateTimeOffset now) => new()
    {
        Id = Guid.CreateVersion7(now),
        BatchId = batch,
        DecisionId = decision,
        Text = Text!.Trim(),
        AskedOf = string.IsNullOrWhiteSpace(AskedOf) ? null : AskedOf.Trim(),
        DueAt = DueAt,
        By = by.Id,
        ByName = by.Name,
        At = now,
    };
}
