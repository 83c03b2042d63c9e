using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Setup;

/// <summary>The grades with their tests and decision rules.</summary>
public sealed partial class GradesPage : LabPage
{
    private IReadOnlyList<Grade> _grades = [];

    public override string Title => "Setup: grades";

    [Inject]
    private ReadGrades Read { get; set; } = null!;

    protected override bool Concerns(Notice notice) => notice.Changes<Grade>();

    protected override async Task LoadAsync(CancellationToken cancellationToken) => _grades = await Read.Run(cancellationToken);

    private static string Words(GradeTest test) =>
        $"{test.Method} by {string.Join(", ", test.Authorities.Select(a => a.Text()))}; {test.HoursToResult} h{(test.Duplicate ? "; in duplicate" : "")}";
}
