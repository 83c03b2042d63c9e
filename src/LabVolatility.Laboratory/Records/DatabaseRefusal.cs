using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Records;

/// <summary>A rule that the database itself held, in words for a person.</summary>
internal static class DatabaseRefusal
{
    /// <summary>The refusal, or null where the save failed for another reason.</summary>
    public static Problem? Of(LabContext context, DbUpdateException failed) => context.RuleOf(failed) switch
    {
        GuardRules.SecondPersonSigns => Refuse(GuardRules.SecondPersonSigns, "You measured or amended a result of this batch: somebody else signs its release."),
        GuardRules.EvidenceIsFrozen => Refuse(GuardRules.EvidenceIsFrozen, "The evidence kept is not what was signed. Look at the batch again, then sign."),
        GuardRules.NoConcessionAgainstALegalLimit => Refuse(GuardRules.NoConcessionAgainstALegalLimit, "A legal limit is not shown to be met: no concession can be made against it."),
        GuardRules.OneDecisionInForce => Refuse(GuardRules.OneDecisionInForce, "Another decision was made meanwhile. Look at the batch again."),
        GuardRules.ReadyInstrumentOnly => Refuse(GuardRules.ReadyInstrumentOnly, "The instrument is out of service."),
        GuardRules.OneTestAContainer => Refuse(GuardRules.OneTestAContainer, "The container has served its one test: use a sealed one."),
        GuardRules.CargoRestsOnReleases => Refuse(GuardRules.CargoRestsOnReleases, "A batch of the cargo has no release in force any more. Look at the batches again, then sign."),
        _ => null,
    };

    private static Problem Refuse(string rule, string message) => new("", message, rule);
}
