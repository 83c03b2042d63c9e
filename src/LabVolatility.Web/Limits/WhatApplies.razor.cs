using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>Asks for a product, a place and a day, and shows the limits picked with the reason for each.</summary>
public sealed partial class WhatApplies : ComponentBase
{
    [Parameter, EditorRequired]
    public AppliesQuestion Question { get; set; } = new();

    [Parameter, EditorRequired]
    public IReadOnlyList<Area> Areas { get; set; } = [];

    [Parameter, EditorRequired]
    public IReadOnlyList<Grade> Grades { get; set; } = [];

    /// <summary>The answer to the address's question; null: nothing was asked, or it can't be read.</summary>
    [Parameter]
    public LimitPick? Pick { get; set; }

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    [Parameter]
    public EventCallback Wanted { get; set; }

    private Task AskAsync() => Wanted.InvokeAsync();

    private void TakeState()
    {
        if (Grades.FirstOrDefault(g => g.Code == Question.Grade) is { } grade)
            Question.State = grade.State.Text();
    }
}
