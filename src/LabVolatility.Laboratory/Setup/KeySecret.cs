using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace LabVolatility.Laboratory.Setup;

/// <summary>The secret of a key: 256 random bits; only its SHA-256 is kept.</summary>
internal static class KeySecret
{
    public const int PrefixLength = 10;
    public const int Longest = 200;

    private const int RandomBytes = 32;

    public static string Make() => "labv-" + Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(RandomBytes));

    public static string Hash(string secret) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));

    public static bool Same(string hash, string other) =>
        CryptographicOperations.FixedTimeEquals(Encoding.ASCII.GetBytes(hash), Encoding.ASCII.GetBytes(other));
}
