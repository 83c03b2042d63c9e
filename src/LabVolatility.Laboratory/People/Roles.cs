namespace LabVolatility.Laboratory.People;

/// <summary>What a person is in the laboratory; one may hold several.</summary>
[Flags]
public enum Roles
{
    None = 0,
    Analyst = 1,
    ShiftChemist = 2,
    BlendingEngineer = 4,
    QualityManager = 8,
    Administrator = 16,
    Auditor = 32,
}
