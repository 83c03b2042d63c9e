using LabVolatility.Laboratory.Batches;

namespace LabVolatility.Laboratory.Demo;

/// <summary>The days on which something happens that a laboratory must be able to deal with.</summary>
internal sealed class DemoIncidents(DemoDays days, DemoSteps steps, DemoBatchDays ordinary)
{
    private const int LeakingBottle = 12;
    private const int Rejected = 21;
    private const int FailedDuplicate = 31;
    private const int Concession = 33;
    private const int VoidedByButane = 36;
    private const int Withdrawn = 38;
    private const int Amended = 45;
    private const int AtNight = 47;
    private const int Undecided = 55;
    private const int LevelsDisagree = 56;
    private const int Hazy = 58;

    /// <summary>The day's story; null where it is an ordinary one.</summary>
    public IEnumerable<DemoStep>? On(int day) => day switch
    {
        LeakingBottle => Leak(DemoBatch.Of(days, day)),
        Rejected => Reject(DemoBatch.Of(days, day)),
        FailedDuplicate => Disagree(DemoBatch.Of(days, day)),
        Concession => Concede(DemoBatch.Of(days, day)),
        VoidedByButane => Trim(DemoBatch.Of(days, day)),
        Withdrawn => Withdraw(DemoBatch.Of(days, day)),
        Amended => Amend(DemoBatch.Of(days, day)),
        AtNight => Alone(DemoBatch.Of(days, day)),
        Undecided => LeaveOpen(DemoBatch.Of(days, day)),
        LevelsDisagree => Hold(DemoBatch.Of(days, day)),
        Hazy => Haze(DemoBatch.Of(days, day)),
        _ => null,
    };

    private IEnumerable<DemoStep> Leak(DemoBatch batch)
    {
        var (first, second) = (batch.Sample("running", 2), batch.Sample("running again", 2));
        return
        [
            .. ordinary.Filled(batch, LeakingBottle),
            steps.Announced(batch, first, days.At(LeakingBottle, 6, 50)),
            steps.Refused(batch, first, days.At(LeakingBottle, 7, 50), 1, "Bottle 1 leaks at the cap; the shift chemist asked for a new sample."),
            .. steps.Drawn(batch, second, days.At(LeakingBottle, 8, 20)),
            steps.Measured(batch, second, 1, days.At(LeakingBottle, 9, 50), batch.Bottle(second, 1)),
            .. ordinary.Gone(batch, LeakingBottle),
        ];
    }

    private IEnumerable<DemoStep> Reject(DemoBatch ordinaryBatch)
    {
        var batch = ordinaryBatch with { Value = ordinaryBatch.Market.Highest + 2.5m };
        return
        [
            .. ordinary.Filled(batch, Rejected), .. ordinary.Running(batch, Rejected),
            steps.Decided(batch, days.At(Rejected, 10, 30), DemoPeople.Tessa, DecisionKind.Reject, "Above the limit; goes back to blending."),
        ];
    }

    // The demo's r is 0.8 kPa: two bottles differ by 0.95, and with two more the mean of four is taken.
    private IEnumerable<DemoStep> Disagree(DemoBatch batch)
    {
        var sample = batch.Sample("running", 5);
        decimal[] above = [-0.45m, 0.50m, 0.00m, 0.05m];
        return
        [
            .. ordinary.Filled(batch, FailedDuplicate, "Five bottles drawn: a new sampler is tried."),
            .. steps.Drawn(batch, sample, days.At(FailedDuplicate, 6, 50)),
            .. above.Index().Select(b => steps.Measured(batch, sample, b.Index + 1, days.At(FailedDuplicate, 8, 5 + (15 * b.Index)), batch.Market.Target + b.Item)),
            steps.EthanolMeasured(batch, days.At(FailedDuplicate, 9, 20)),
            .. ordinary.Gone(batch, FailedDuplicate),
        ];
    }

    // The contract allows 68.0, the law 70.0 kPa.
    private IEnumerable<DemoStep> Concede(DemoBatch ordinaryBatch)
    {
        var batch = ordinaryBatch with { Value = 68.9m };
        return
        [
            .. ordinary.Filled(batch, Concession), .. ordinary.Running(batch, Concession),
            steps.Decided(batch, days.At(Concession, 10, 30), DemoPeople.Hugh, DecisionKind.Concession, "Above the contract's maximum, within the legal one; the buyer agreed in writing (demo letter 7)."),
            steps.Certified(batch, days.At(Concession, 10, 35), DemoPeople.Hugh),
            steps.Delivered(batch, days.At(Concession, 13)),
        ];
    }

    private IEnumerable<DemoStep> Trim(DemoBatch batch)
    {
        var again = batch.Sample("running after butane", 2);
        return
        [
            .. ordinary.Filled(batch, VoidedByButane), .. ordinary.Running(batch, VoidedByButane),
            steps.ButaneAdded(batch, days.At(VoidedByButane, 9, 30)),
            .. steps.Drawn(batch, again, days.At(VoidedByButane, 11)),
            steps.Measured(batch, again, 1, days.At(VoidedByButane, 12, 40), batch.Bottle(again, 1) + 0.4m),
            .. steps.Released(batch, days.At(VoidedByButane, 13, 30)),
            steps.Delivered(batch, days.At(VoidedByButane, 15)),
        ];
    }

    private IEnumerable<DemoStep> Withdraw(DemoBatch batch) =>
    [
        .. ordinary.Filled(batch, Withdrawn), .. ordinary.Running(batch, Withdrawn),
        .. steps.Released(batch, days.At(Withdrawn, 10, 30)),
        steps.Decided(batch, days.At(Withdrawn, 12, 10), DemoPeople.Kola, DecisionKind.Withdraw, "A valve to the next tank was found open: what the tank holds is in doubt."),
    ];

    private IEnumerable<DemoStep> Amend(DemoBatch batch)
    {
        var sample = batch.Sample("running", 2);
        return
        [
            .. ordinary.Filled(batch, Amended), .. ordinary.Running(batch, Amended), .. ordinary.Gone(batch, Amended),
            steps.Amended(sample, 1, days.At(Amended + 1, 9), batch.Bottle(sample, 1) + 0.3m, "Typing slip found when the day's sheets were looked through: the instrument's print-out shows another figure."),
        ];
    }

    // Nobody signs what they measured: the one on call signs from where they are.
    private IEnumerable<DemoStep> Alone(DemoBatch ordinaryBatch)
    {
        var batch = ordinaryBatch with { Analyst = DemoPeople.Tessa };
        var sample = batch.Sample("running", 2);
        return
        [
            .. ordinary.Filled(batch, AtNight),
            .. steps.Drawn(batch, sample, days.At(AtNight, 21, 30)),
            steps.Measured(batch, sample, 1, days.At(AtNight, 23, 5), batch.Bottle(sample, 1)),
            .. steps.Released(batch, days.At(AtNight, 23, 40), DemoPeople.Kola),
        ];
    }

    // Within the guarded zone of 95 %: neither accepted nor refused.
    private IEnumerable<DemoStep> LeaveOpen(DemoBatch ordinaryBatch)
    {
        var batch = ordinaryBatch with { Value = ordinaryBatch.Market.Highest - 0.4m };
        return [.. ordinary.Filled(batch, Undecided), .. ordinary.Running(batch, Undecided)];
    }

    private IEnumerable<DemoStep> Hold(DemoBatch batch) =>
    [
        .. ordinary.Filled(batch, LevelsDisagree, "Control room knows; circulation planned."),
        .. ordinary.Levels(batch, LevelsDisagree, upper: 0.30m, middle: 0.10m),
        steps.Decided(batch, days.At(LevelsDisagree, 10, 30), DemoPeople.Tessa, DecisionKind.Hold, "Upper and lower differ by more than r: circulate the tank, then sample again."),
    ];

    private IEnumerable<DemoStep> Haze(DemoBatch batch) =>
        [.. ordinary.Filled(batch, Hazy), .. ordinary.Running(batch, Hazy, hazy: true)];
}
