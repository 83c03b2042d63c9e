using System.Text.Json;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Keeps what an analyst has typed at the bench, as typed, one draft a person and test.</summary>
public sealed class SaveDraft(Func<LabContext> open, TimeProvider clock)
{
    private const int LongestContent = 20_000;

    /// <returns>When it was saved.</returns>
    public async Task<Answer<DateTimeOffset>> Run(Actor actor, Guid test, BenchEntry entry, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.Determine, "Measuring") is { } lacking)
            return Answer<DateTimeOffset>.Forbidden(lacking);
        var content = JsonSerializer.Serialize(entry);
        if (content.Length > LongestContent)
            return Answer<DateTimeOffset>.Invalid(new Problem("", "That is more than a draft holds."));
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        if (!await context.AssignedTests.AnyAsync(t => t.Id == test, cancel))
            return Answer<DateTimeOffset>.NotFound("There is no such test.");
        var draft = await context.Drafts.FirstOrDefaultAsync(d => d.TestId == test && d.PersonId == actor.Id, cancel);
        if (draft is null)
        {
            draft = new BenchDraft { Id = Guid.NewGuid(), TestId = test, PersonId = actor.Id, Content = content };
            context.Drafts.Add(draft);
        }

        draft.Content = content;
        draft.SavedAt = clock.GetUtcNow();
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return Answer<DateTimeOffset>.Done(draft.SavedAt);
    }

    /// <summary>Reads a draft's content; null where it can't be read any more.</summary>
    public static BenchEntry? Read(string content)
    {
        try
        {
            return JsonSerializer.Deserialize<BenchEntry>(content);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
