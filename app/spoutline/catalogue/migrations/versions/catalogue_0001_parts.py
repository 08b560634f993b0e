"""Parts, their ports and listings, what each kind adds, prices."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "catalogue_0001"
down_revision = None
branch_labels = None
depends_on = None


def upgrade() -> None:  # one table after the other: longer than a screen, nothing to understand
    """Make the tables."""
    op.create_table(
        "catalogue_edition",
        sa.Column("id", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("edition", sa.String(length=200), nullable=False),
        sa.Column("fingerprint", sa.String(length=64), nullable=False),
        sa.Column("last_part_id", sa.Integer(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_catalogue_edition")),
    )
    op.create_table(
        "catalogue_maker",
        sa.Column("prefix", sa.String(length=2), nullable=False),
        sa.Column("name", sa.String(length=200), nullable=False),
        sa.PrimaryKeyConstraint("prefix", name=op.f("pk_catalogue_maker")),
        sa.UniqueConstraint("name", name=op.f("uq_catalogue_maker_name")),
    )
    op.create_table(
        "catalogue_part",
        sa.Column("id", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("number", sa.String(length=40), nullable=False),
        sa.Column("maker", sa.String(length=200), nullable=False),
        sa.Column("kind", sa.String(length=40), nullable=False),
        sa.Column("name", sa.String(length=200), nullable=False),
        sa.Column("search_text", sa.String(length=600), nullable=False),
        sa.Column("status", sa.String(length=40), nullable=False),
        sa.Column("superseded_by", sa.String(length=40), nullable=True),
        sa.Column("path", sa.String(length=40), nullable=True),
        sa.Column("temperature_minimum_c", sa.Double(), nullable=False),
        sa.Column("temperature_maximum_c", sa.Double(), nullable=False),
        sa.Column("maximum_pressure_pa", sa.Double(), nullable=False),
        sa.Column("flow_coefficient_kv", sa.Double(), nullable=True),
        sa.Column("mass_kg", sa.Double(), nullable=False),
        sa.Column("resistance_ohm", sa.Double(), nullable=True),
        sa.Column("length_m", sa.Double(), nullable=False),
        sa.Column("pull_strength_n", sa.Double(), nullable=True),
        sa.Column("lead_time_days", sa.Integer(), nullable=False),
        sa.Column("pack_quantity", sa.Integer(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_catalogue_part")),
        sa.UniqueConstraint("number", name=op.f("uq_catalogue_part_number")),
    )
    op.create_index(
        op.f("ix_catalogue_part_kind_path_status_temperature_minimum_c_temperature_maximum_c"),
        "catalogue_part",
        ["kind", "path", "status", "temperature_minimum_c", "temperature_maximum_c"],
        unique=False,
    )
    op.create_index(op.f("ix_catalogue_part_kind_status"), "catalogue_part", ["kind", "status"], unique=False)
    op.create_table(
        "catalogue_accessory",
        sa.Column("part_id", sa.Integer(), nullable=False),
        sa.Column("fits_diameter_minimum_m", sa.Double(), nullable=True),
        sa.Column("fits_diameter_maximum_m", sa.Double(), nullable=True),
        sa.Column("label_def", sa.Boolean(), nullable=False),
        sa.ForeignKeyConstraint(
            ["part_id"], ["catalogue_part.id"], name=op.f("fk_catalogue_accessory_part_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("part_id", name=op.f("pk_catalogue_accessory")),
    )
    op.create_table(
        "catalogue_adaptor",
        sa.Column("part_id", sa.Integer(), nullable=False),
        sa.Column("closes_vapour", sa.Boolean(), nullable=False),
        sa.Column("needs_vapour_return", sa.Boolean(), nullable=False),
        sa.ForeignKeyConstraint(
            ["part_id"], ["catalogue_part.id"], name=op.f("fk_catalogue_adaptor_part_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("part_id", name=op.f("pk_catalogue_adaptor")),
    )
    op.create_table(
        "catalogue_breakaway",
        sa.Column("part_id", sa.Integer(), nullable=False),
        sa.Column("separation_minimum_n", sa.Double(), nullable=False),
        sa.Column("separation_maximum_n", sa.Double(), nullable=False),
        sa.Column("reconnectable", sa.Boolean(), nullable=False),
        sa.Column("closes_vapour", sa.Boolean(), nullable=False),
        sa.Column("omnidirectional", sa.Boolean(), nullable=False),
        sa.Column("seal_diameter_m", sa.Double(), nullable=True),
        sa.ForeignKeyConstraint(
            ["part_id"], ["catalogue_part.id"], name=op.f("fk_catalogue_breakaway_part_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("part_id", name=op.f("pk_catalogue_breakaway")),
    )
    op.create_table(
        "catalogue_hose",
        sa.Column("part_id", sa.Integer(), nullable=False),
        sa.Column("construction", sa.String(length=40), nullable=False),
        sa.Column("bore_m", sa.Double(), nullable=False),
        sa.Column("length_m", sa.Double(), nullable=False),
        sa.Column("outside_diameter_m", sa.Double(), nullable=False),
        sa.Column("minimum_bend_radius_m", sa.Double(), nullable=False),
        sa.Column("mass_kg_m", sa.Double(), nullable=False),
        sa.Column("resistance_ohm_m", sa.Double(), nullable=True),
        sa.Column("permeation_kg_m2_s", sa.Double(), nullable=True),
        sa.Column("low_permeation", sa.Boolean(), nullable=False),
        sa.Column("built_in_swivel", sa.Boolean(), nullable=False),
        sa.Column("inner_tube_bore_m", sa.Double(), nullable=True),
        sa.Column("inner_tube_outside_diameter_m", sa.Double(), nullable=True),
        sa.ForeignKeyConstraint(
            ["part_id"], ["catalogue_part.id"], name=op.f("fk_catalogue_hose_part_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("part_id", name=op.f("pk_catalogue_hose")),
    )
    op.create_table(
        "catalogue_label_class",
        sa.Column("part_id", sa.Integer(), nullable=False),
        sa.Column("word", sa.String(length=40), nullable=False),
        sa.ForeignKeyConstraint(
            ["part_id"], ["catalogue_part.id"], name=op.f("fk_catalogue_label_class_part_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("part_id", "word", name=op.f("pk_catalogue_label_class")),
    )
    op.create_table(
        "catalogue_listing",
        sa.Column("part_id", sa.Integer(), nullable=False),
        sa.Column("word", sa.String(length=40), nullable=False),
        sa.ForeignKeyConstraint(
            ["part_id"], ["catalogue_part.id"], name=op.f("fk_catalogue_listing_part_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("part_id", "word", name=op.f("pk_catalogue_listing")),
    )
    op.create_index(op.f("ix_catalogue_listing_word_part_id"), "catalogue_listing", ["word", "part_id"], unique=False)
    op.create_table(
        "catalogue_material",
        sa.Column("part_id", sa.Integer(), nullable=False),
        sa.Column("place", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("word", sa.String(length=40), nullable=False),
        sa.ForeignKeyConstraint(
            ["part_id"], ["catalogue_part.id"], name=op.f("fk_catalogue_material_part_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("part_id", "place", name=op.f("pk_catalogue_material")),
    )
    op.create_table(
        "catalogue_nozzle",
        sa.Column("part_id", sa.Integer(), nullable=False),
        sa.Column("operation", sa.String(length=40), nullable=False),
        sa.Column("service", sa.String(length=40), nullable=False),
        sa.Column("spout_outside_diameter_m", sa.Double(), nullable=False),
        sa.Column("spout_straight_length_m", sa.Double(), nullable=False),
        sa.Column("spring_distance_m", sa.Double(), nullable=True),
        sa.Column("hold_open", sa.Boolean(), nullable=False),
        sa.Column("no_pressure_device", sa.Boolean(), nullable=False),
        sa.Column("attitude_device", sa.Boolean(), nullable=False),
        sa.Column("bellows", sa.Boolean(), nullable=False),
        sa.Column("misfill_interlock", sa.Boolean(), nullable=False),
        sa.Column("enhanced_conventional", sa.Boolean(), nullable=False),
        sa.Column("def_zone_evaluated", sa.Boolean(), nullable=False),
        sa.Column("minimum_flow_m3_s", sa.Double(), nullable=True),
        sa.Column("maximum_flow_m3_s", sa.Double(), nullable=False),
        sa.Column("opening_pressure_pa", sa.Double(), nullable=True),
        sa.ForeignKeyConstraint(
            ["part_id"], ["catalogue_part.id"], name=op.f("fk_catalogue_nozzle_part_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("part_id", name=op.f("pk_catalogue_nozzle")),
    )
    op.create_table(
        "catalogue_nozzle_liquid",
        sa.Column("part_id", sa.Integer(), nullable=False),
        sa.Column("word", sa.String(length=40), nullable=False),
        sa.ForeignKeyConstraint(
            ["part_id"], ["catalogue_part.id"], name=op.f("fk_catalogue_nozzle_liquid_part_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("part_id", "word", name=op.f("pk_catalogue_nozzle_liquid")),
    )
    op.create_table(
        "catalogue_placement",
        sa.Column("part_id", sa.Integer(), nullable=False),
        sa.Column("word", sa.String(length=40), nullable=False),
        sa.ForeignKeyConstraint(
            ["part_id"], ["catalogue_part.id"], name=op.f("fk_catalogue_placement_part_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("part_id", "word", name=op.f("pk_catalogue_placement")),
    )
    op.create_table(
        "catalogue_port",
        sa.Column("part_id", sa.Integer(), nullable=False),
        sa.Column("end", sa.String(length=40), nullable=False),
        sa.Column("thread", sa.String(length=40), nullable=False),
        sa.Column("size", sa.String(length=40), nullable=False),
        sa.Column("gender", sa.String(length=40), nullable=False),
        sa.Column("path", sa.String(length=40), nullable=False),
        sa.ForeignKeyConstraint(
            ["part_id"], ["catalogue_part.id"], name=op.f("fk_catalogue_port_part_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("part_id", "end", name=op.f("pk_catalogue_port")),
    )
    op.create_table(
        "catalogue_price",
        sa.Column("part_id", sa.Integer(), nullable=False),
        sa.Column("currency", sa.String(length=3), nullable=False),
        sa.Column("minor", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["part_id"], ["catalogue_part.id"], name=op.f("fk_catalogue_price_part_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("part_id", "currency", name=op.f("pk_catalogue_price")),
    )
    op.create_index(op.f("ix_catalogue_price_currency"), "catalogue_price", ["currency"], unique=False)
    op.create_table(
        "catalogue_scheme",
        sa.Column("part_id", sa.Integer(), nullable=False),
        sa.Column("word", sa.String(length=40), nullable=False),
        sa.ForeignKeyConstraint(
            ["part_id"], ["catalogue_part.id"], name=op.f("fk_catalogue_scheme_part_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("part_id", "word", name=op.f("pk_catalogue_scheme")),
    )
    op.create_index(op.f("ix_catalogue_scheme_word_part_id"), "catalogue_scheme", ["word", "part_id"], unique=False)
    op.create_table(
        "catalogue_swivel",
        sa.Column("part_id", sa.Integer(), nullable=False),
        sa.Column("planes", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["part_id"], ["catalogue_part.id"], name=op.f("fk_catalogue_swivel_part_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("part_id", name=op.f("pk_catalogue_swivel")),
    )


def downgrade() -> None:
    """Drop the tables."""
    op.drop_table("catalogue_swivel")
    op.drop_index(op.f("ix_catalogue_scheme_word_part_id"), table_name="catalogue_scheme")
    op.drop_table("catalogue_scheme")
    op.drop_index(op.f("ix_catalogue_price_currency"), table_name="catalogue_price")
    op.drop_table("catalogue_price")
    op.drop_table("catalogue_port")
    op.drop_table("catalogue_placement")
    op.drop_table("catalogue_nozzle_liquid")
    op.drop_table("catalogue_nozzle")
    op.drop_table("catalogue_material")
    op.drop_index(op.f("ix_catalogue_listing_word_part_id"), table_name="catalogue_listing")
    op.drop_table("catalogue_listing")
    op.drop_table("catalogue_label_class")
    op.drop_table("catalogue_hose")
    op.drop_table("catalogue_breakaway")
    op.drop_table("catalogue_adaptor")
    op.drop_table("catalogue_accessory")
    op.drop_index(op.f("ix_catalogue_part_kind_status"), table_name="catalogue_part")
    op.drop_index(
        op.f("ix_catalogue_part_kind_path_status_temperature_minimum_c_temperature_maximum_c"),
        table_name="catalogue_part",
    )
    op.drop_table("catalogue_part")
    op.drop_table("catalogue_maker")
    op.drop_table("catalogue_edition")
