using LabVolatility.Laboratory.Bench;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <summary>The tests that wait, with what each needs.</summary>
public sealed partial class WaitingTests : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<WaitingTest> Waiting { get; set; } = [];

    [Inject]
    private LabClock Clock { get; set; } = null!;

    private string Needs(WaitingTest test)
    {
        var words = new List<string>();
        if (test.OwnDraftAt is { } at)
            words.Add($"Your draft of {Clock.TimeText(at)} waits.");
        if (test.Made == 1 && test.Wanted == 2)
            words.Add("The duplicate is due, from a sealed bottle.");
        else if (test.Made > 0)
            words.Add(test.Why ?? $"{test.Wanted - test.Made} more.");
        if (test.ToTakeOn > 0)
            words.Add("A determination waits for a person to take it on.");
        else if (test.Offered == 0)
            words.Add("No sealed bottle is left: ask for a new sample.");
        return string.Join(" ", words);
    }
}
