using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.People;

/// <summary>Makes the first account, once, for whoever holds the code from the console.</summary>
public sealed partial class FirstAdministratorPage : ComponentBase
{
    private bool _made;
    private string? _problem;

    [SupplyParameterFromForm(FormName = "first")]
    private FirstEntry? Entry { get; set; }

    [Inject]
    private FirstAdministratorCode Code { get; set; } = null!;

    [Inject]
    private MakeFirstAdministrator Make { get; set; } = null!;

    [Inject]
    private ILogger<FirstAdministratorPage> Log { get; set; } = null!;

    private async Task MakeAsync()
    {
        if (!Code.Matches(Entry?.Code))
        {
            Log.LogWarning("First administrator refused: wrong code");
            _problem = "This is not the code. It stands on the console where the program was started; a new start prints a new one.";
            return;
        }

        var made = await Make.Run(Entry?.UserName ?? "", Entry?.FullName ?? "", Entry?.Password ?? "");
        _made = made.Ok;
        _problem = made.Ok ? null : made.Text;
        if (made.Ok || made.Kind == AnswerKind.Refused)
            Code.Close();
    }
}
