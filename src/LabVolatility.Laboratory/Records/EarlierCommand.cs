using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Records;

/// <summary>Whether a command was done before: the same one sent again does nothing twice.</summary>
/// <param name="Subject">What it was done to; null where it is new.</param>
/// <param name="IsOther">The id belongs to a command of another kind.</param>
internal readonly record struct EarlierCommand(string? Subject, bool IsOther)
{
    public const string Taken = "This command's id was used for something else: send it with an id of its own.";

    public static async Task<EarlierCommand> FindAsync(LabContext context, Guid id, string name, CancellationToken cancel)
    {
        var done = await context.Commands.AsNoTracking().Where(c => c.Id == id)
            .Select(c => new { c.Name, c.Subject }).FirstOrDefaultAsync(cancel);
        return done is null ? default
            : done.Name == name ? new EarlierCommand(done.Subject, false)
            : new EarlierCommand(null, true);
    }
}
