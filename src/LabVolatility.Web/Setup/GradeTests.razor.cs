using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Setup;

/// <summary>The tests of a grade as typed.</summary>
public sealed partial class GradeTests : ComponentBase
{
    [Parameter, EditorRequired]
    public IList<GradeTestEntry> Tests { get; set; } = [];

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    private string? Wrong(string field) => Problems.FirstOrDefault(p => p.Field == field)?.Message;
}
