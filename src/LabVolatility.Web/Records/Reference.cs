using System.Security.Cryptography;

namespace LabVolatility.Web.Records;

/// <summary>The short number by which a person's fault is found in the log.</summary>
public static class Reference
{
    public const string Property = "Reference";

    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWX23456789";
    private const int Length = 8;
    private static readonly object Key = new();

    public static string Make() => RandomNumberGenerator.GetString(Letters, Length);

    /// <summary>The reference of this request.</summary>
    public static string Of(HttpContext http)
    {
        if (http.Items[Key] is string known)
            return known;
        var made = Make();
        http.Items[Key] = made;
        return made;
    }
}
