namespace LabVolatility.Web.Records;

/// <summary>The filter of the records as typed and as it stands in the address.</summary>
public sealed class RecordsEntry
{
    public string? Text { get; set; }

    public string? Subject { get; set; }

    public string? SubjectId { get; set; }

    /// <summary>Laboratory's date, included.</summary>
    public string? From { get; set; }

    /// <summary>Laboratory's date, included.</summary>
    public string? Until { get; set; }
}
