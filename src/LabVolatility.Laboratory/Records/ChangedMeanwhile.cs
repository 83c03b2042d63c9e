using System.Globalization;
using System.Text.Json;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Records;

/// <summary>Tells who comes second what the first one changed: who, and each value now and before, from the audit record.</summary>
internal static class ChangedMeanwhile
{
    private const int Longest = 6;
    private const int LongestValue = 80;

    /// <param name="lab">The running transaction's context.</param>
    /// <param name="what">The thing as the sentence begins: "Batch 26-1042".</param>
    /// <param name="key">Its key.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public static async Task<string> TextAsync<T>(LabContext lab, string what, object key, CancellationToken cancellationToken) where T : IRecorded
    {
        var subject = RecordedMembers.SubjectOf(typeof(T));
        var id = Convert.ToString(key, CultureInfo.InvariantCulture);
        var last = await lab.AuditRecords.AsNoTracking().Where(r => r.Subject == subject && r.SubjectId == id)
            .OrderByDescending(r => r.Sequence).Select(r => new { r.Actor, r.Before, r.After }).FirstOrDefaultAsync(cancellationToken);
        if (last is null)
            return $"{what} was changed by somebody else meanwhile. Look at it again.";
        var differences = Differences(last.Before, last.After);
        var values = differences.Count is 0 or > Longest ? "" : $": {string.Join("; ", differences)}";
        return $"{what} was changed by {last.Actor} meanwhile{values}. Nothing you typed is lost, and nothing of it is saved yet.";
    }

    private static List<string> Differences(string? before, string? after)
    {
        var (was, now) = (Members(before), Members(after));
        return [.. was.Keys.Union(now.Keys).Order(StringComparer.Ordinal)
            .Where(m => was.GetValueOrDefault(m) != now.GetValueOrDefault(m))
            .Select(m => $"{SnakeCase.Of(m).Replace('_', ' ')} is {Value(now, m)}, was {Value(was, m)}")];
    }

    private static string Value(Dictionary<string, string> members, string member) => members.GetValueOrDefault(member) switch
    {
        null or "" => "empty",
        { Length: > LongestValue } => "another list",
        var value => value,
    };

    private static Dictionary<string, string> Members(string? json)
    {
        if (json is null)
            return [];
        using var document = JsonDocument.Parse(json);
        return document.RootElement.EnumerateObject()
            .ToDictionary(m => m.Name, m => m.Value.ValueKind is JsonValueKind.String ? m.Value.GetString()! : m.Value.GetRawText());
    }
}
