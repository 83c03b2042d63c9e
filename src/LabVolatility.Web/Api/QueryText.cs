using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Web.Api;

/// <summary>Reads what stands behind the question mark: unknown names and twins are mistakes.</summary>
internal sealed class QueryText(IQueryCollection query, Mistakes mistakes, params string[] known)
{
    private const int Longest = 200;

    public void Check()
    {
        foreach (var (name, values) in query)
        {
            if (!known.Contains(name))
                mistakes.Add(Mistakes.Step("", name.Length > Longest ? name[..Longest] : name), $"There is no such question here; known are {string.Join(", ", known)}.");
            else if (values.Count > 1)
                mistakes.Add($"/{name}", "It is there more than once.");
            else if (values.ToString() is { } text && (text.Length > Longest || text.Any(char.IsControl)))
                mistakes.Add($"/{name}", $"It is text of at most {Longest} characters.");
        }
    }

    /// <summary>Null where it isn't asked.</summary>
    public string? this[string name] => query[name].ToString() is { Length: > 0 } text ? text : null;

    /// <summary>A local date, or a moment with its offset; null where it isn't asked or isn't one.</summary>
    public ReadResults.Bound? Bound(string name)
    {
        if (this[name] is not { } text)
            return null;
        if (DateShape.TryRead(text, out var day))
            return new(day, null);
        // An unescaped + arrives as a space.
        if (InstantShape.TryRead(text.Replace(' ', '+'), out var moment))
            return new(null, moment);
        mistakes.Add($"/{name}", "It must be a date that exists, as 2026-05-10, or a time with its offset, as 2026-05-10T14:05:00Z.");
        return null;
    }

    public DateOnly? Date(string name)
    {
        if (this[name] is not { } text)
            return null;
        if (DateShape.TryRead(text, out var date))
            return date;
        mistakes.Add($"/{name}", "It must be a date that exists, as 2026-05-10.");
        return null;
    }
}
