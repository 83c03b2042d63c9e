namespace LabVolatility.Web.Batches;

/// <summary>The readable address of a batch: /batches/26-1042.</summary>
public static class BatchAddress
{
    public static string Of(string number) => $"/batches/{Uri.EscapeDataString(number)}";
}
