namespace LabVolatility.Web.People;

/// <summary>An address to return to: a path of this laboratory, or its front page.</summary>
public static class LocalAddress
{
    public static string Of(string? address) =>
        address is ['/', ..] && address is not ['/', '/' or '\\', ..] && !address.Any(char.IsControl) && !address.Contains('\\', StringComparison.Ordinal)
            ? address
            : "/";
}
