using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <summary>What the method demands before the injection, each step answered or confirmed by itself.</summary>
public sealed partial class HandlingStepList : ComponentBase
{
    private const string Haze = "haze";

    private static readonly (int Number, string Word, bool Hazy, int Phases)[] Looks =
        [(1, "clear", false, 1), (2, "hazy", true, 1), (3, "two phases", false, 2)];

    [Parameter, EditorRequired]
    public BenchTest Test { get; set; } = null!;

    [Parameter, EditorRequired]
    public BenchEntry Entry { get; set; } = null!;

    [Parameter, EditorRequired]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    /// <summary>Raised with what is changed in the entry as it is then, which may be newer than the one that is drawn.</summary>
    [Parameter, EditorRequired]
    public EventCallback<Func<BenchEntry, BenchEntry>> Changed { get; set; }

    /// <summary>The moment, for what is confirmed.</summary>
    [Parameter, EditorRequired]
    public Func<DateTimeOffset> Now { get; set; } = null!;

    // To be read here, and answered by a value that is typed with the readings.
    private IEnumerable<HandlingStep> Read => Test.Method.Handling.Where(h => h.Code is "rinse" or "introduce" or "consecutive");

    private bool Looked => IsConfirmed(Haze);

    private bool IsConfirmed(string code) => Entry.Confirmed.Any(c => c.Code == code);

    private HandlingStep? Step(string code) => Test.Method.Handling.FirstOrDefault(h => h.Code == code);

    private Caution? Caution(string code) => Test.Method.Cautions.FirstOrDefault(c => c.Code == code);

    private Task LookAsync(bool hazy, int phases) =>
        Changed.InvokeAsync(e => With(e, Haze, true) with { Hazy = hazy, Phases = phases });

    private Task ConfirmAsync(string code, bool confirmed) => Changed.InvokeAsync(e => With(e, code, confirmed));

    private BenchEntry With(BenchEntry entry, string code, bool confirmed)
    {
        var others = entry.Confirmed.Where(c => c.Code != code);
        return entry with { Confirmed = [.. confirmed ? others.Append(new ConfirmedStep(code, Now().ToUniversalTime())) : others] };
    }
}
