using LabVolatility.Core.Methods;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Methods;

/// <summary>Handling steps, cautions and findings of a method.</summary>
public sealed partial class MethodSteps : ComponentBase
{
    [Parameter, EditorRequired]
    public TestMethod Method { get; set; } = null!;

    private static string Or(string words) => words.Length > 0 ? words : "never";
}
