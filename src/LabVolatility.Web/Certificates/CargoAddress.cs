namespace LabVolatility.Web.Certificates;

/// <summary>The addresses of cargo certificates: /batches/cargo/C2600042.</summary>
public static class CargoAddress
{
    public const string All = "/batches/cargo";

    public static string Of(string number) => $"{All}/{Uri.EscapeDataString(number)}";

    /// <summary>A new one that begins with a batch.</summary>
    public static string With(string batch) => $"{All}/new?batch={Uri.EscapeDataString(batch)}";

    /// <summary>The next revision of one.</summary>
    public static string Revise(string number) => $"{All}/new?replaces={Uri.EscapeDataString(number)}";
}
