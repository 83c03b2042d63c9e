using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>The tests of a sample, how far each is, and the way to the bench.</summary>
public sealed partial class SampleTests : ComponentBase
{
    private string? _why;

    [Parameter, EditorRequired]
    public SampleSheet Sheet { get; set; } = null!;

    [Parameter]
    public bool MayMeasure { get; set; }

    [Parameter]
    public bool MayCancel { get; set; }

    /// <summary>Raised with the test to take off and the reason typed.</summary>
    [Parameter, EditorRequired]
    public EventCallback<(Guid Test, string? Reason)> Cancelled { get; set; }

    [Inject]
    private LabClock Clock { get; set; } = null!;

    private int Counting(AssignedTest test) => Sheet.Determinations.Count(d => d.TestId == test.Id && d.DoesNotCount is null);
}
