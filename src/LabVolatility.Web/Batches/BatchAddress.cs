namespace LabVolatility.Web.Batches;

/// <summary>The readable addresses of a batch: /batches/26-1042, and on a telephone /night/26-1042.</summary>
public static class BatchAddress
{
    public static string Of(string number) => $"/batches/{Uri.EscapeDataString(number)}";

    public static string AtNight(string number) => $"/night/{Uri.EscapeDataString(number)}";
}
