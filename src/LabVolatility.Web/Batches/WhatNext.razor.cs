using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Samples;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>The next step of the tree agreed beforehand: one sentence, one button, why; and the steps taken.</summary>
public sealed partial class WhatNext : ComponentBase
{
    private (RetestOccasion, string, int)? _for;
    private Guid _command;
    private string? _reason;

    [Parameter, EditorRequired]
    public BatchSheet Sheet { get; set; } = null!;

    [Parameter, EditorRequired]
    public Actor Actor { get; set; } = null!;

    [Parameter]
    public bool Busy { get; set; }

    [Parameter]
    public EventCallback<TakeStepRequest> Taken { get; set; }

    [Parameter]
    public EventCallback<RetestAdvice> HoldAsked { get; set; }

    private RetestAdvice? Next => Sheet.Next;

    private bool MayTake => Actor.May(Right.Decide);

    // What was found is the reason unless the person says it otherwise; a reload of the same step keeps what was typed.
    protected override void OnParametersSet()
    {
        if (Next is not { } next || _for == (next.Occasion, next.Subject, next.Place))
            return;
        _for = (next.Occasion, next.Subject, next.Place);
        (_command, _reason) = (Guid.NewGuid(), next.Found);
    }

    private Task TakeAsync() =>
        Taken.InvokeAsync(TakeStepRequest.Of(Sheet.Batch.Number, Next!) with { CommandId = _command, Reason = _reason });
}
