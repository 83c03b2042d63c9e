using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;
using Microsoft.AspNetCore.DataProtection.EntityFrameworkCore;
using Microsoft.AspNetCore.Identity.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace LabVolatility.Laboratory.Storage;

/// <summary>The laboratory's database. Open one for a use case, set <see cref="Act"/>, save, dispose.</summary>
/// <remarks>Every change of a recorded thing leaves its audit record in the same transaction, or isn't made.</remarks>
public abstract class LabContext(DbContextOptions options, TimeProvider clock)
    : IdentityUserContext<Person, Guid>(options), IDataProtectionKeyContext
{
    public DbSet<Person> People => Users;
    public DbSet<OnCallTurn> OnCallTurns => Set<OnCallTurn>();
    public DbSet<LaboratorySettings> Settings => Set<LaboratorySettings>();
    public DbSet<Counter> Counters => Set<Counter>();
    public DbSet<InterfaceKey> Keys => Set<InterfaceKey>();
    public DbSet<Grade> Grades => Set<Grade>();
    public DbSet<Tank> Tanks => Set<Tank>();
    public DbSet<SamplePoint> SamplePoints => Set<SamplePoint>();
    public DbSet<TankMovement> TankMovements => Set<TankMovement>();
    public DbSet<Sample> Samples => Set<Sample>();
    public DbSet<Container> Containers => Set<Container>();
    public DbSet<ContainerOpening> ContainerOpenings => Set<ContainerOpening>();
    public DbSet<AssignedTest> AssignedTests => Set<AssignedTest>();
    public DbSet<HandBlend> HandBlends => Set<HandBlend>();
    public DbSet<BlendContent> BlendContents => Set<BlendContent>();
    public DbSet<BenchDraft> Drafts => Set<BenchDraft>();
    public DbSet<Determination> Determinations => Set<Determination>();
    public DbSet<DeterminationRevision> DeterminationRevisions => Set<DeterminationRevision>();
    public DbSet<Result> Results => Set<Result>();
    public DbSet<TakenOn> TakenOns => Set<TakenOn>();
    public DbSet<Instrument> Instruments => Set<Instrument>();
    public DbSet<Verification> Verifications => Set<Verification>();
    public DbSet<PrecisionEntry> PrecisionEntries => Set<PrecisionEntry>();
    public DbSet<CorrelationEntry> CorrelationEntries => Set<CorrelationEntry>();
    public DbSet<LaboratoryArea> LaboratoryAreas => Set<LaboratoryArea>();
    public DbSet<LaboratoryLimit> LaboratoryLimits => Set<LaboratoryLimit>();
    public DbSet<FactConfirmation> FactConfirmations => Set<FactConfirmation>();
    public DbSet<Batch> Batches => Set<Batch>();
    public DbSet<FrozenAssessment> Assessments => Set<FrozenAssessment>();
    public DbSet<Decision> Decisions => Set<Decision>();
    public DbSet<ReviewMark> ReviewMarks => Set<ReviewMark>();
    public DbSet<PartyResult> PartyResults => Set<PartyResult>();
    public DbSet<PartyWithdrawal> PartyWithdrawals => Set<PartyWithdrawal>();
    public DbSet<StepTaken> StepsTaken => Set<StepTaken>();
    public DbSet<HandoverNote> HandoverNotes => Set<HandoverNote>();
    public DbSet<HandoverTaken> HandoverTakings => Set<HandoverTaken>();
    public DbSet<Certificate> Certificates => Set<Certificate>();
    public DbSet<Cargo> Cargoes => Set<Cargo>();
    public DbSet<CargoTank> CargoTanks => Set<CargoTank>();
    public DbSet<AuditRecord> AuditRecords => Set<AuditRecord>();
    public DbSet<PerformedCommand> Commands => Set<PerformedCommand>();
    public DbSet<DataProtectionKey> DataProtectionKeys => Set<DataProtectionKey>();

    /// <summary>Who does what; due before a recorded thing is saved.</summary>
    public Act? Act { get; set; }

    /// <summary>The clock that the records are timed by.</summary>
    public TimeProvider Clock { get; } = clock;

    internal abstract DatabaseEngine Engine { get; }

    /// <summary>What the running transaction has saved so far and nobody was told yet.</summary>
    internal List<(Act Act, DateTimeOffset At, Change Change)> Untold { get; } = [];

    /// <summary>The reference data that this context has read.</summary>
    internal ReadOnce Read { get; set; } = new();

    /// <summary>Opens the transaction of a use case that writes: writers follow one another, so that what one reads holds until it commits.</summary>
    /// <remarks>Where one is open already it is a part of that one.</remarks>
    public async Task<IDbContextTransaction> BeginWriteAsync(CancellationToken cancellationToken = default)
    {
        if (Database.CurrentTransaction is { } around)
            return await PartOfTransaction.BeginAsync(this, around, cancellationToken);
        var transaction = await Database.BeginTransactionAsync(cancellationToken);
        try
        {
            await Engine.LockChainAsync(this, cancellationToken);
            return transaction;
        }
        catch
        {
            await transaction.DisposeAsync();
            throw;
        }
    }

    /// <summary>The next number of a counter, 1 at first; given back when the transaction is rolled back.</summary>
    public async Task<long> NextAsync(string counter, CancellationToken cancellationToken = default)
    {
        const string Sql = """
            INSERT INTO counters (name, value) VALUES ({0}, 1)
            ON CONFLICT (name) DO UPDATE SET value = counters.value + 1
            RETURNING value AS "Value"
            """;
        var given = await Database.SqlQueryRaw<long>(Sql, counter).ToListAsync(cancellationToken);
        return given[0];
    }

    /// <summary>True where a save failed because somebody else's row holds the key or the place in line already.</summary>
    public bool IsUniqueViolation(Exception exception) => Engine.IsUniqueViolation(exception);

    /// <summary>The rule of the laboratory by which the database refused a save, such as "second-person-signs"; else null.</summary>
    public string? RuleOf(Exception exception) => Engine.RuleOf(exception);

    public override int SaveChanges(bool acceptAllChangesOnSuccess)
    {
        if (PendingChanges.Of(this).Recorded.Count > 0)
            throw new NotSupportedException("Recorded things are saved by SaveChangesAsync, together with their audit records.");
        return base.SaveChanges(acceptAllChangesOnSuccess);
    }

    public override async Task<int> SaveChangesAsync(bool acceptAllChangesOnSuccess, CancellationToken cancellationToken = default)
    {
        var pending = PendingChanges.Of(this);
        // What is recorded is saved behind a savepoint of our own, which holds the audit records as well.
        Database.AutoSavepointsEnabled = pending.Recorded.Count == 0;
        if (pending.Recorded.Count == 0)
            return await base.SaveChangesAsync(acceptAllChangesOnSuccess, cancellationToken);

        Read.ForgetIfChanged(pending.Recorded);
        await using var step = await SavingStep.BeginAsync(this, cancellationToken);
        var records = await pending.DescribeAsync(this, cancellationToken);
        var written = await base.SaveChangesAsync(acceptAllChangesOnSuccess: false, cancellationToken);
        await ChainWriter.AppendAsync(this, records, cancellationToken);
        Untold.AddRange(records.Select(r => (Act!, Clock.GetUtcNow(), r)));
        await step.KeepAsync(cancellationToken);
        if (acceptAllChangesOnSuccess)
            ChangeTracker.AcceptAllChanges();
        return written;
    }

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        configurationBuilder.Properties<Enum>().HaveConversion<string>().HaveMaxLength(100);
        configurationBuilder.Properties<decimal>().HavePrecision(28, PendingChanges.DecimalPlaces);
    }

    protected override void OnModelCreating(ModelBuilder builder)
    {
        base.OnModelCreating(builder);
        builder.ApplyConfigurationsFromAssembly(typeof(LabContext).Assembly);
        IdentityTables.Configure(builder);
        SnakeCase.NameColumns(builder);
        foreach (var entity in builder.Model.GetEntityTypes())
        {
            foreach (var key in entity.GetForeignKeys())
                key.DeleteBehavior = DeleteBehavior.Restrict;
            if (entity.FindProperty(PendingChanges.VersionName) is { } version && version.ClrType == typeof(Guid))
                version.IsConcurrencyToken = true;
        }
    }
}
