namespace LabVolatility.Web.Api;

/// <summary>A number that stands in an address.</summary>
internal static class PathText
{
    private const int Longest = 100;

    /// <summary>False for text that no number of the laboratory is, and that a database might refuse.</summary>
    public static bool IsPlain(string text) => text.Length <= Longest && !text.Any(c => char.IsControl(c) || char.IsSurrogate(c));
}
