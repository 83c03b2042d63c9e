using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.People;

internal sealed class OnCallTurnConfiguration : IEntityTypeConfiguration<OnCallTurn>
{
    public void Configure(EntityTypeBuilder<OnCallTurn> turn)
    {
        turn.ToTable("on_call_turns");
        turn.Property(t => t.Phone).HasMaxLength(Lengths.Name);
        turn.HasIndex(t => t.Until);
        turn.HasOne<Person>().WithMany().HasForeignKey(t => t.PersonId);
        turn.HasOne<Person>().WithMany().HasForeignKey(t => t.EnteredBy);
    }
}
