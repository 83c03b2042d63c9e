using LabVolatility.Laboratory.Instruments;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Instruments;

/// <summary>Calibration, out of service, back in service.</summary>
public sealed partial class ServiceForms : ComponentBase
{
    private string? _on;
    private string? _due;
    private string? _reference;
    private string? _reason;

    [Parameter, EditorRequired]
    public Instrument Instrument { get; set; } = null!;

    [Parameter]
    public bool MayPutBack { get; set; }

    [Parameter]
    public bool Busy { get; set; }

    [Parameter, EditorRequired]
    public EventCallback<string?> Stopped { get; set; }

    [Parameter, EditorRequired]
    public EventCallback<string?> PutBack { get; set; }

    /// <summary>Raised with both dates and the reference as typed.</summary>
    [Parameter, EditorRequired]
    public EventCallback<(string? On, string? Due, string? Reference)> Calibrated { get; set; }
}
