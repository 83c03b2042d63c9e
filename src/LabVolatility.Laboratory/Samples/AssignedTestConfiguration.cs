using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Samples;

internal sealed class AssignedTestConfiguration : IEntityTypeConfiguration<AssignedTest>
{
    public void Configure(EntityTypeBuilder<AssignedTest> test)
    {
        test.ToTable("assigned_tests");
        test.Property(t => t.Method).HasMaxLength(Lengths.Code);
        test.Property(t => t.Authorities).HasJson();
        test.Property(t => t.Why).HasMaxLength(Lengths.Note);
        test.HasIndex(t => new { t.State, t.DueAt });
    }
}
