using LabVolatility.Laboratory.People;

namespace LabVolatility.Laboratory.Demo;

/// <summary>The invented people of Northmere Refinery, as the demo's sign-in page lists them.</summary>
public static class DemoPeople
{
    public static IReadOnlyList<DemoPerson> All { get; } =
    [
        new("i.fenwick", "Ines Fenwick", Roles.Analyst, "copper-kettle-on-ice"),
        new("o.brandt", "Oskar Brandt", Roles.Analyst, "three-grey-herons-wade"),
        new("t.marlowe", "Tessa Marlowe", Roles.ShiftChemist, "night-train-to-harbour"),

        // On call at night, and the deputy who approves what the quality manager drafts.
        new("k.adeyemi", "Kola Adeyemi", Roles.ShiftChemist | Roles.QualityManager, "lantern-above-quay-six"),
        new("r.quist", "Runa Quist", Roles.BlendingEngineer, "more-clover-less-thyme"),
        new("h.dallimore", "Hugh Dallimore", Roles.QualityManager, "brass-scales-and-chalk"),
        new("s.okonjo", "Sade Okonjo", Roles.Administrator, "keys-under-the-juniper"),
        new("p.varga", "Petra Varga", Roles.Auditor, "green-ink-wide-margin"),
    ];

    internal const string Ines = "i.fenwick";
    internal const string Oskar = "o.brandt";
    internal const string Tessa = "t.marlowe";
    internal const string Kola = "k.adeyemi";
    internal const string Runa = "r.quist";
    internal const string Hugh = "h.dallimore";

    internal static DemoPerson Named(string userName) => All.First(p => p.UserName == userName);
}
