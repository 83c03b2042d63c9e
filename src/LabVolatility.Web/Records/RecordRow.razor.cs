using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Records;

/// <summary>One audit record; opens to what was before and what is now.</summary>
public sealed partial class RecordRow : ComponentBase
{
    private const int ShownOfId = 12;
    private bool _open;

    [Parameter, EditorRequired]
    public AuditRecord Record { get; set; } = null!;

    private IReadOnlyList<RecordDifference> Lines => RecordDifference.Of(Record.Before, Record.After);

    private string Short => Record.SubjectId.Length <= ShownOfId ? Record.SubjectId : "…" + Record.SubjectId[^ShownOfId..];
}
