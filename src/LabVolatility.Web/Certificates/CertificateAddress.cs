using System.Globalization;

namespace LabVolatility.Web.Certificates;

/// <summary>The addresses of certificates: /certificates/C2600001.pdf?revision=2, /certificates/check/7H2K-9QXB-41TN.</summary>
public static class CertificateAddress
{
    public static string Of(string number, int revision) =>
        string.Create(CultureInfo.InvariantCulture, $"/certificates/{Uri.EscapeDataString(number)}.pdf?revision={revision}");

    public static string Check(string code) => $"/certificates/check/{Uri.EscapeDataString(code)}";
}
