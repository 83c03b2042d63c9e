using LabVolatility.Web.Setup;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.People;

/// <summary>The door: static, because a cookie is written by an answer and never by an open page.</summary>
public sealed partial class SignInPage : ComponentBase
{
    private string? _problem;

    [SupplyParameterFromForm(FormName = "sign-in")]
    private SignInEntry? Entry { get; set; }

    [SupplyParameterFromQuery(Name = SignInCookie.ReturnParameter)]
    private string? Return { get; set; }

    [CascadingParameter]
    private HttpContext Http { get; set; } = null!;

    [Inject]
    private SignIn Door { get; set; } = null!;

    [Inject]
    private WebSettings Settings { get; set; } = null!;

    [Inject]
    private LaboratoryFacts Facts { get; set; } = null!;

    [Inject]
    private FirstAdministratorCode FirstCode { get; set; } = null!;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    private async Task SignInAsync()
    {
        _problem = await Door.RunAsync(Http, Entry?.UserName, Entry?.Password);
        if (_problem is null)
            Addresses.NavigateTo(LocalAddress.Of(Return));
    }
}
