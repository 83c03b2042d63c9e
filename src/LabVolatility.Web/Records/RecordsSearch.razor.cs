using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Records;

/// <summary>What to find among the records.</summary>
public sealed partial class RecordsSearch : ComponentBase
{
    private RecordsEntry? _shown;
    private RecordsEntry _form = new();

    [Parameter, EditorRequired]
    public RecordsEntry Filter { get; set; } = new();

    [Parameter, EditorRequired]
    public IReadOnlyList<string> Subjects { get; set; } = [];

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    [Parameter]
    public EventCallback<RecordsEntry> Wanted { get; set; }

    protected override void OnParametersSet()
    {
        if (ReferenceEquals(_shown, Filter))
            return;
        _shown = Filter;
        _form = new RecordsEntry { Text = Filter.Text, Subject = Filter.Subject, SubjectId = Filter.SubjectId, From = Filter.From, Until = Filter.Until };
    }
}
