namespace LabVolatility.Laboratory.People;

/// <summary>Who may do what. One table, asked by page, interface and command alike.</summary>
public static class Rights
{
    private const Roles All = Roles.Analyst | Roles.ShiftChemist | Roles.BlendingEngineer | Roles.QualityManager | Roles.Administrator | Roles.Auditor;

    /// <summary>The roles that hold a right.</summary>
    public static Roles Holders(Right right) => right switch
    {
        Right.RegisterSamples or Right.Determine or Right.AmendBeforeDecision or Right.CheckInstruments
            => Roles.Analyst | Roles.ShiftChemist | Roles.QualityManager,
        Right.AmendAfterDecision or Right.Decide or Right.Withdraw => Roles.ShiftChemist | Roles.QualityManager,
        Right.GrantConcession or Right.PutInstrumentBack or Right.ManageReferenceData => Roles.QualityManager,
        Right.ManageBatches => Roles.ShiftChemist | Roles.BlendingEngineer,
        Right.Administer => Roles.Administrator,
        Right.Read => All,
        Right.Export or Right.CheckRecords => Roles.QualityManager | Roles.Auditor,
        _ => Roles.None,
    };

    /// <summary>True when one of the roles holds the right.</summary>
    public static bool Allow(Roles roles, Right right) => (roles & Holders(right)) != Roles.None;

    /// <summary>The roles by name, for a message: "shift chemist or quality manager".</summary>
    public static string HoldersText(Right right) => string.Join(" or ", RoleNames.Of(Holders(right)));
}
