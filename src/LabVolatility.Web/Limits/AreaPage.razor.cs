using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>One area: its year, its limits, and every version of the laboratory's own.</summary>
public sealed partial class AreaPage : LabPage
{
    private AreaSheet? _sheet;
    private Area? _area;
    private IReadOnlyList<Problem> _problems = [];
    private ConfirmDialog? _confirm;
    private string? _confirming;
    private string? _done;

    public override string Title => Code;

    [Parameter]
    public string Code { get; set; } = "";

    [Inject]
    private ReadArea Read { get; set; } = null!;

    [Inject]
    private KeepArea Areas { get; set; } = null!;

    [Inject]
    private KeepLimit Limits { get; set; } = null!;

    protected override bool Concerns(Notice notice) => notice.ChangesLimits();

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        _sheet = await Read.Run(Code, cancellationToken);
        _area = _sheet?.On(Clock.Today);
        if (_sheet is null)
            Missing = $"There is no area {Code}. The list of limits has them all.";
    }

    private async Task ConfirmedAsync(bool confirmed)
    {
        if (confirmed)
            _done = $"{_confirming} is confirmed.";
        _confirming = null;
        if (confirmed)
            await ReloadAsync();
    }

    private Task ApproveAsync(LaboratoryArea area) => ApproveAsync(
        $"Approve area {area.Code}",
        $"The calendar holds {LimitWords.Days(area.EffectiveFrom, area.EffectiveUntil)} and takes the place of an earlier version on those days. Releases whose period of use is not over are marked for review.",
        async () => await Areas.Approve(await ActorNowAsync(), area.Id, Leaving));

    private Task ApproveAsync(LaboratoryLimit limit) => ApproveAsync(
        $"Approve {limit.Key}",
        $"{LimitWords.Quantity(limit.Quantity, limit.Correlation)} {LimitWords.Edges(limit.Minimum, limit.Maximum, limit.Unit, limit.Digits)} holds {LimitWords.Days(limit.EffectiveFrom, limit.EffectiveUntil)} and takes the place of an earlier version on those days. Releases whose period of use is not over are marked for review.",
        async () => await Limits.Approve(await ActorNowAsync(), limit.Id, Leaving));

    private async Task ApproveAsync(string act, string what, Func<Task<Answer<Guid>>> approve)
    {
        if (_confirm is null || !await _confirm.AskAsync(act, what))
            return;
        var answer = await approve();
        _problems = answer.Problems;
        _done = answer.Ok ? $"{act}: done." : null;
        await ReloadAsync();
    }
}
