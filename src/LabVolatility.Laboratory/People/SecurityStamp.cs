using System.Security.Cryptography;

namespace LabVolatility.Laboratory.People;

/// <summary>A new stamp ends every session that was opened under the old one.</summary>
internal static class SecurityStamp
{
    public static string Make() => RandomNumberGenerator.GetHexString(40);
}
