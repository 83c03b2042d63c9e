using LabVolatility.Core.Methods;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <summary>A caution at its step: signal word, symbol, what can happen and what to do.</summary>
public sealed partial class CautionNote : ComponentBase
{
    public const string Deferral = "These reminders don't replace local codes, site rules and authorised practice, which come first.";

    [Parameter, EditorRequired]
    public TestMethod Method { get; set; } = null!;

    /// <summary>Its number in the list of cautions; nothing is shown where the method has none of it.</summary>
    [Parameter, EditorRequired]
    public string Code { get; set; } = "";

    private Caution? Caution => Method.Cautions.FirstOrDefault(c => c.Code == Code);
}
