using System.Globalization;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Instruments;

/// <summary>One instrument: its readiness, today's verification, its history.</summary>
public sealed partial class InstrumentPage : LabPage
{
    private InstrumentSheet? _sheet;
    private IReadOnlyList<Problem> _problems = [];
    private IReadOnlyList<Problem> _checkProblems = [];
    private string? _said;
    private bool _busy;

    public override string Title => $"Instrument {Code}";

    [Parameter]
    public string Code { get; set; } = "";

    [Inject]
    private ReadInstrument Read { get; set; } = null!;

    [Inject]
    private RecordVerification Record { get; set; } = null!;

    [Inject]
    private KeepInstrument Keep { get; set; } = null!;

    protected override bool Concerns(Notice notice) => notice.ChangesReadiness() && notice.IsAbout<Instrument>(Code);

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        _sheet = await Read.Run(Code, cancellationToken);
        if (_sheet is null)
            Missing = $"There is no instrument {Code}.";
    }

    private Task CheckAsync(RecordVerification.Request request) => ActAsync(async actor =>
    {
        var answer = await Record.Run(actor, request, Leaving);
        _checkProblems = answer.Problems;
        _said = !answer.Ok ? null
            : answer.Value ? "Entered: the verification fluid is in its band."
            : "Entered: the verification fluid is out of its band. The instrument is not ready; what was measured on it today is marked for review.";
    });

    private Task StopAsync(string? reason) => ActAsync(async actor =>
        Said(await Keep.Stop(actor, Code, _sheet!.Line.Instrument.Version, reason, Leaving), "It is out of service."));

    private Task PutBackAsync(string? reason) => ActAsync(async actor =>
        Said(await Keep.PutBack(actor, Code, _sheet!.Line.Instrument.Version, reason, Leaving), "It is back in service."));

    private Task CalibratedAsync((string? On, string? Due, string? Reference) typed) => ActAsync(async actor =>
    {
        if (!TryDay(typed.On, out var on) || !TryDay(typed.Due, out var due))
        {
            _problems = [new Problem("", "Give both dates as 2026-11-25.")];
            return;
        }

        Said(await Keep.Calibrated(actor, Code, _sheet!.Line.Instrument.Version, on, due, typed.Reference, Leaving), "The calibration is recorded.");
    });

    private static bool TryDay(string? text, out DateOnly day) =>
        DateOnly.TryParseExact((text ?? "").Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day);

    private void Said(Answer<string> answer, string words)
    {
        _problems = answer.Problems;
        _said = answer.Ok ? words : null;
    }

    private async Task ActAsync(Func<Actor, Task> act)
    {
        if (_busy)
            return;
        _busy = true;
        try
        {
            await act(await ActorNowAsync());
            await ReloadAsync();
        }
        finally
        {
            _busy = false;
        }
    }
}
