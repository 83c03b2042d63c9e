using System.Globalization;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Setup;

/// <summary>What a new key needs.</summary>
public sealed partial class KeyForm : ComponentBase
{
    private const string UsualDays = "365";

    private static readonly (KeyScopes Scope, string Words)[] All =
    [
        (KeyScopes.Calculate, "calculate: work out results, nothing is stored"),
        (KeyScopes.Read, "read: samples, batches, results, certificates"),
        (KeyScopes.Write, "write: register samples, send determinations, enter batches"),
        (KeyScopes.Import, "import: send files by a profile"),
    ];

    private string? _name;
    private Guid? _owner;
    private string? _days = UsualDays;
    private KeyScopes _scopes;
    private bool _busy;

    [Parameter, EditorRequired]
    public IReadOnlyList<PersonLine> Owners { get; set; } = [];

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    [Parameter]
    public EventCallback<NewKey> Wanted { get; set; }

    public void Clear() => (_name, _owner, _days, _scopes) = (null, null, UsualDays, KeyScopes.None);

    private void Toggle(KeyScopes scope, bool opens) => _scopes = opens ? _scopes | scope : _scopes & ~scope;

    private async Task MakeAsync()
    {
        if (_busy)
            return;
        _busy = true;
        try
        {
            var days = int.TryParse(_days?.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var given) ? given : 0;
            await Wanted.InvokeAsync(new NewKey(_name ?? "", _owner ?? Guid.Empty, _scopes, days));
        }
        finally
        {
            _busy = false;
        }
    }
}
