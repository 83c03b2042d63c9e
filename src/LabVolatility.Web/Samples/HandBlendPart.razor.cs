using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>The recipe of a hand blend with its measured content; or the blends made from a blendstock.</summary>
public sealed partial class HandBlendPart : ComponentBase
{
    private string? _percent;
    private string? _method;

    [Parameter, EditorRequired]
    public string Number { get; set; } = "";

    [Parameter, EditorRequired]
    public HandBlendSheet Blends { get; set; } = null!;

    [Parameter]
    public bool MayMeasure { get; set; }

    [Parameter]
    public bool IsReceived { get; set; }

    [Parameter]
    public bool Busy { get; set; }

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    [Parameter, EditorRequired]
    public EventCallback<RecordBlendContent.Request> Entered { get; set; }

    private Task EnterAsync() => Entered.InvokeAsync(new RecordBlendContent.Request(Guid.NewGuid(), Number, _percent, _method));
}
