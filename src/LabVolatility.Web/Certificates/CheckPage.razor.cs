using LabVolatility.Laboratory.Certificates;
using LabVolatility.Web.Layout;
using LabVolatility.Web.Setup;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Certificates;

/// <summary>Tells a recipient whether a certificate is genuine and in force, and nothing else.</summary>
public sealed partial class CheckPage : ComponentBase
{
    private ReadCertificates.Check? _found;
    private bool _asked;

    [Parameter]
    public string? Code { get; set; }

    [SupplyParameterFromForm(FormName = "check", Name = "Typed")]
    private string? Typed { get; set; }

    [CascadingParameter]
    private HttpContext Http { get; set; } = null!;

    [Inject]
    private ReadCertificates Read { get; set; } = null!;

    [Inject]
    private LaboratoryFacts Facts { get; set; } = null!;

    [Inject]
    private LabClock Clock { get; set; } = null!;

    protected override Task OnInitializedAsync() => Code is null || HttpMethods.IsPost(Http.Request.Method) ? Task.CompletedTask : AskAsync(Code);

    private Task CheckAsync() => AskAsync(Typed);

    private async Task AskAsync(string? code)
    {
        _asked = !string.IsNullOrWhiteSpace(code);
        _found = _asked ? await Read.ByCode(code, Http.RequestAborted) : null;
    }
}
