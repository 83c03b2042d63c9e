using LabVolatility.Laboratory.Batches;

namespace LabVolatility.Laboratory.Demo;

/// <summary>The days on which something happens that a laboratory must be able to deal with.</summary>
/// <remarks>
/// They come round every sixteen weeks, named by how many days before the first start they lie. In the last round some
/// are left open, so that there is work; in the rounds before it each came to its end.
/// </remarks>
internal sealed class DemoIncidents(DemoDays days, DemoSteps steps, DemoBatchDays ordinary)
{
    /// <summary>Days from one round to the next; whole turns of products, tanks and destinations.</summary>
    public const int Round = 112;

    private const int LeakingBottle = 48;
    private const int Rejected = 40;
    private const int FailedDuplicate = 31;
    private const int Concession = 28;
    private const int VoidedByButane = 24;
    private const int Withdrawn = 22;
    private const int Amended = 16;
    private const int AtNight = 13;
    private const int Undecided = 7;
    private const int LevelsDisagree = 6;
    private const int Hazy = 3;

    /// <summary>Where a day lies in its round.</summary>
    public static int InRound(int back) => back % Round;

    /// <summary>The day's story; null where it is an ordinary one.</summary>
    public IEnumerable<DemoStep>? On(int day)
    {
        var batch = DemoBatch.Of(days, day);
        var isLast = batch.Back < Round;
        return InRound(batch.Back) switch
        {
            LeakingBottle => Leak(batch, day),
            Rejected => Reject(batch with { Value = batch.Market.Highest + 2.5m }, day, "Above the limit; goes back to blending."),
            FailedDuplicate => Disagree(batch, day),
            Concession => Concede(batch with { Value = 68.6m }, day),
            VoidedByButane => Trim(batch, day),
            Withdrawn => isLast ? Withdraw(batch, day) : [.. Withdraw(batch, day), SentBack(batch, day)],
            Amended => isLast ? Amend(batch, day) : [.. Amend(batch, day), .. steps.Released(batch, days.At(day + 1, 9, 40), DemoPeople.Tessa)],
            AtNight => Alone(batch with { Analyst = DemoPeople.Tessa }, day),
            Undecided => isLast ? LeaveOpen(AtTheEdge(batch), day) : Reject(AtTheEdge(batch), day, "Too near the limit for the measurement to decide; goes back to blending."),
            LevelsDisagree => isLast ? Hold(batch, day) : [.. Hold(batch, day), .. Mixed(batch, day)],
            Hazy => isLast ? Haze(batch, day) : [.. Haze(batch, day), Drained(batch, day)],
            _ => null,
        };
    }

    private IEnumerable<DemoStep> Leak(DemoBatch batch, int day)
    {
        var (first, second) = (batch.Sample("running", 2), batch.Sample("running again", 2));
        return
        [
            .. ordinary.Filled(batch, day),
            steps.Announced(batch, first, days.At(day, 6, 50)),
            steps.Refused(batch, first, days.At(day, 7, 50), 1, "Bottle 1 leaks at the cap; the shift chemist asked for a new sample."),
            .. steps.Drawn(batch, second, days.At(day, 8, 20)),
            steps.Measured(batch, second, 1, days.At(day, 9, 50), batch.Bottle(second, 1)),
            .. ordinary.Gone(batch, day),
        ];
    }

    private IEnumerable<DemoStep> Reject(DemoBatch batch, int day, string why) =>
    [
        .. ordinary.Filled(batch, day), .. ordinary.Running(batch, day),
        steps.Decided(batch, days.At(day, 10, 30), DemoPeople.Tessa, DecisionKind.Reject, why),
    ];

    // The demo's r is 0.8 kPa: two bottles differ by 0.95; a third and a fourth are opened by the tree, and the mean of four is taken.
    private IEnumerable<DemoStep> Disagree(DemoBatch batch, int day)
    {
        var sample = batch.Sample("running", 5);
        decimal[] above = [-0.45m, 0.50m, 0.00m, 0.05m];
        return
        [
            .. ordinary.Filled(batch, day, "Five bottles drawn: a new sampler is tried."),
            .. steps.Drawn(batch, sample, days.At(day, 6, 50)),
            .. above.Index().Select(b => steps.Measured(batch, sample, b.Index + 1, days.At(day, 8, 5 + (15 * b.Index)), batch.Market.Target + b.Item)),
            steps.StepTaken(batch, days.At(day, 8, 25), DemoPeople.Tessa),
            steps.StepTaken(batch, days.At(day, 8, 40), DemoPeople.Tessa),
            steps.EthanolMeasured(batch, days.At(day, 9, 20)),
            .. ordinary.Gone(batch, day),
        ];
    }

    // The contract allows 68.0, the law 70.0 kPa.
    private IEnumerable<DemoStep> Concede(DemoBatch batch, int day) =>
    [
        .. ordinary.Filled(batch, day), .. ordinary.Running(batch, day),
        steps.Decided(batch, days.At(day, 10, 30), DemoPeople.Hugh, DecisionKind.Concession, "Above the contract's maximum, within the legal one; the buyer agreed in writing (demo letter 7)."),
        .. steps.Certified(batch, days.At(day, 10, 35), DemoPeople.Hugh),
        steps.Delivered(batch, days.At(day, 13)),
    ];

    private IEnumerable<DemoStep> Trim(DemoBatch batch, int day)
    {
        var again = batch.Sample("running after butane", 2);
        return
        [
            .. ordinary.Filled(batch, day), .. ordinary.Running(batch, day),
            steps.ButaneAdded(batch, days.At(day, 9, 30)),
            .. steps.Drawn(batch, again, days.At(day, 11)),
            steps.Measured(batch, again, 1, days.At(day, 12, 40), batch.Bottle(again, 1) + 0.4m),
            .. steps.Released(batch, days.At(day, 13, 30)),
            steps.Delivered(batch, days.At(day, 15)),
        ];
    }

    private IEnumerable<DemoStep> Withdraw(DemoBatch batch, int day) =>
    [
        .. ordinary.Filled(batch, day), .. ordinary.Running(batch, day),
        .. steps.Released(batch, days.At(day, 10, 30)),
        steps.Decided(batch, days.At(day, 12, 10), DemoPeople.Kola, DecisionKind.Withdraw, "A valve to the next tank was found open: what the tank holds is in doubt."),
    ];

    private DemoStep SentBack(DemoBatch batch, int day) =>
        steps.Decided(batch, days.At(day, 15), DemoPeople.Tessa, DecisionKind.Reject, "Mixed with what the next tank held; goes back to blending.");

    // Released by another person than the one who amends it the day after.
    private IEnumerable<DemoStep> Amend(DemoBatch batch, int day)
    {
        var sample = batch.Sample("running", 2);
        return
        [
            .. ordinary.Filled(batch, day), .. ordinary.Running(batch, day),
            .. steps.Released(batch, days.At(day, 10, 30)), steps.Delivered(batch, days.At(day, 13)),
            steps.Amended(sample, 1, days.At(day + 1, 9), batch.Bottle(sample, 1) + 0.3m, "Typing slip found when the day's sheets were looked through: the instrument's print-out shows another figure."),
        ];
    }

    // Nobody signs what they measured: the one on call signs from where they are.
    private IEnumerable<DemoStep> Alone(DemoBatch batch, int day)
    {
        var sample = batch.Sample("running", 2);
        return
        [
            .. ordinary.Filled(batch, day),
            .. steps.Drawn(batch, sample, days.At(day, 21, 30)),
            steps.Measured(batch, sample, 1, days.At(day, 23, 5), batch.Bottle(sample, 1)),
            .. steps.Released(batch, days.At(day, 23, 40), DemoPeople.Kola),
        ];
    }

    // Within the guarded zone of 95 %: neither accepted nor refused.
    private static DemoBatch AtTheEdge(DemoBatch batch) => batch with { Value = batch.Market.Highest - 0.4m };

    private IEnumerable<DemoStep> LeaveOpen(DemoBatch batch, int day) =>
        [.. ordinary.Filled(batch, day), .. ordinary.Running(batch, day)];

    private IEnumerable<DemoStep> Hold(DemoBatch batch, int day) =>
    [
        .. ordinary.Filled(batch, day, "Control room knows; circulation planned."),
        .. ordinary.Levels(batch, day, upper: 0.30m, middle: 0.10m),
        steps.Decided(batch, days.At(day, 10, 30), DemoPeople.Tessa, DecisionKind.Hold, "Upper and lower differ by more than r: circulate the tank, then sample again."),
    ];

    private IEnumerable<DemoStep> Mixed(DemoBatch batch, int day) =>
    [
        steps.Circulated(batch, days.At(day, 12)),
        .. ordinary.Levels(batch, day, hour: 15, again: " after circulation"),
        .. steps.Released(batch, days.At(day, 18, 20), DemoPeople.Kola), steps.Delivered(batch, days.At(day, 20)),
    ];

    private IEnumerable<DemoStep> Haze(DemoBatch batch, int day) =>
        [.. ordinary.Filled(batch, day), .. ordinary.Running(batch, day, hazy: true)];

    private DemoStep Drained(DemoBatch batch, int day) =>
        steps.Decided(batch, days.At(day, 14), DemoPeople.Tessa, DecisionKind.Reject, "Hazy, so that no precision holds; water stands in the tank. Goes back to blending.");
}
