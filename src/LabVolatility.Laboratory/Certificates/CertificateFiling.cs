using System.Security.Cryptography;
using LabVolatility.Laboratory.Certificates.Documents;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>What every certificate gets when it is filed: a number never used twice, a code to check it by, a hash.</summary>
internal static class CertificateFiling
{
    /// <summary>The next number of the year; certificates of batches and of cargoes share one series.</summary>
    public static async Task<string> NumberAsync(LabContext context, LaboratorySettings settings, DateTimeOffset now, CancellationToken cancel)
    {
        var year = LaboratoryTime.Of(settings).Local(now).Year;
        var serial = await context.NextAsync($"certificate {year}", cancel);
        return FormattableString.Invariant($"C{year % 100:00}{serial:00000}");
    }

    public static string NewCode() => CheckCode.From(RandomNumberGenerator.GetBytes(CheckCode.RandomBytes));

    public static string CheckAddress(LaboratorySettings settings, string code) =>
        $"{settings.PublicAddress?.TrimEnd('/')}/certificates/check/{code}";

    public static string Sha256(byte[] pdf) => Convert.ToHexString(SHA256.HashData(pdf));
}
