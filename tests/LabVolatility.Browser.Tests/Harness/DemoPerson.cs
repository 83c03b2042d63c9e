namespace LabVolatility.Browser.Tests.Harness;

/// <summary>Somebody of the invented refinery, by the name that the sign-in page lists.</summary>
public sealed record DemoPerson(string FullName)
{
    public static DemoPerson Analyst { get; } = new("Ines Fenwick");

    public static DemoPerson OtherAnalyst { get; } = new("Oskar Brandt");

    public static DemoPerson ShiftChemist { get; } = new("Tessa Marlowe");

    public static DemoPerson OnCall { get; } = new("Kola Adeyemi");

    public static DemoPerson BlendingEngineer { get; } = new("Runa Quist");

    public static DemoPerson QualityManager { get; } = new("Hugh Dallimore");

    public static DemoPerson Administrator { get; } = new("Sade Okonjo");

    public static DemoPerson Auditor { get; } = new("Petra Varga");

    public override string ToString() => FullName;
}
