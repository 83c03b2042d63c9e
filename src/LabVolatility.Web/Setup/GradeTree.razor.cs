using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Setup;

/// <summary>The tree of a grade: for each occasion the steps in their order; every branch ends with a hold.</summary>
public sealed partial class GradeTree : ComponentBase
{
    private static readonly RetestKind[] Offered = [.. Enum.GetValues<RetestKind>().Where(k => k != RetestKind.HoldAndCall)];

    [Parameter, EditorRequired]
    public List<RetestRuleEntry> Rules { get; set; } = [];

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    private FactStatus Status => new RetestTree([.. Rules.Select(r => r.Read())]).Status;

    private string? Wrong(string field) => Problems.FirstOrDefault(p => p.Field == field)?.Message;

    private string? StepWrong(int rule, int step)
    {
        var field = $"/tree/{rule}/{step}";
        return Wrong(field) ?? Wrong($"{field}/times") ?? Wrong($"{field}/containers");
    }
}
