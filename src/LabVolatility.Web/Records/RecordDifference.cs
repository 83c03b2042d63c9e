using System.Text.Json;

namespace LabVolatility.Web.Records;

/// <summary>One member of a recorded thing before and after a change; null where it was not there.</summary>
public sealed record RecordDifference(string Member, string? Before, string? After)
{
    public bool Changed => Before != After;

    /// <summary>The changed members first, then those that stayed, as the record has them in JSON.</summary>
    public static IReadOnlyList<RecordDifference> Of(string? before, string? after)
    {
        var was = Members(before);
        var now = Members(after);
        return [.. was.Keys.Union(now.Keys)
            .Select(member => new RecordDifference(member, was.GetValueOrDefault(member), now.GetValueOrDefault(member)))
            .OrderByDescending(d => d.Changed).ThenBy(d => d.Member, StringComparer.Ordinal)];
    }

    private static Dictionary<string, string> Members(string? json)
    {
        if (string.IsNullOrEmpty(json))
            return [];
        using var document = JsonDocument.Parse(json);
        return document.RootElement.EnumerateObject()
            .Where(m => m.Value.ValueKind is not JsonValueKind.Null)
            .ToDictionary(m => m.Name, m => m.Value.ValueKind is JsonValueKind.String ? m.Value.GetString()! : m.Value.GetRawText());
    }
}
