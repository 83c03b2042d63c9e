using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;

namespace LabVolatility.Web.Batches;

/// <summary>A hand-over note as typed.</summary>
public sealed class HandoverEntry
{
    /// <summary>The command's id: made once per form, so that a second click writes nothing twice.</summary>
    public Guid CommandId { get; } = Guid.NewGuid();

    public string? Text { get; set; }

    public string? AskedOf { get; set; }

    public string? DueAt { get; set; }

    /// <summary>What stands against it, field by field.</summary>
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    /// <summary>What was typed; null where nothing was. What can't be read stands in <see cref="Problems"/>.</summary>
    public Handover? Read(LabClock clock)
    {
        Problems = [];
        if (new[] { Text, AskedOf, DueAt }.All(string.IsNullOrWhiteSpace))
            return null;
        DateTimeOffset? due = null;
        if (!string.IsNullOrWhiteSpace(DueAt))
        {
            if (clock.TryRead(DueAt, out var at, out var problem))
                due = at;
            else
                Problems = [new Problem("/handover/dueAt", problem!)];
        }

        if (string.IsNullOrWhiteSpace(Text))
            Problems = [.. Problems, new Problem("/handover/text", "Say what the next shift must know or do.")];
        return new Handover(Text, AskedOf, due);
    }
}
